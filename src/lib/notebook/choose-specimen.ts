import type { Notebook, Specimen, SpecimenId } from '#core/journal';

/** The specimens whose log can be opened, those still growing first, each group as begun. */
export function openSpecimens(notebook: Notebook): readonly Specimen[] {
  const specimens = [...notebook.specimens.values()].filter((specimen) =>
    notebook.investigations.has(specimen.investigation),
  );
  const isOver = (specimen: Specimen): boolean =>
    specimen.ended !== null || notebook.investigations.get(specimen.investigation)?.ended !== null;
  return [
    ...specimens.filter((specimen) => !isOver(specimen)),
    ...specimens.filter((specimen) => isOver(specimen)),
  ];
}

/** The specimen an address asks for, or the one last open on this device, or the first. */
export function chooseSpecimen(
  notebook: Notebook,
  asked: string | null,
  lastOpen: string | null,
): SpecimenId | null {
  const open = openSpecimens(notebook);
  const chosen =
    open.find((each) => each.id === asked) ?? open.find((each) => each.id === lastOpen) ?? open[0];
  return chosen?.id ?? null;
}
