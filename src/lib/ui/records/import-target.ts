import type { SpecimenName } from '#core/exchange';
import type { InvestigationId, Notebook, Origin, Quantity, SpecimenId } from '#core/journal';
import { quantityWords } from '#ui/words';

/** Where a table's rows go: into a log that is there, or into one that is begun for them. */
export type ImportTarget = ExistingSpecimen | NewSpecimen | NewInvestigation;

export interface ExistingSpecimen {
  readonly kind: 'existing';
  readonly specimen: SpecimenId;
}

export interface NewSpecimen {
  readonly kind: 'new-specimen';
  readonly investigation: InvestigationId;
  readonly specimenName: string;
}

export interface NewInvestigation {
  readonly kind: 'new';
  readonly quantity: Quantity;
  readonly title: string;
  readonly specimenName: string;
  /** Whose numbers they are: ours, or somebody else's to practise with. */
  readonly origin: Origin;
}

/**
 * A first choice: the log of the same name; or a new specimen in the investigation of the same
 * name, or in the one that another part of this table was brought into; or a new investigation.
 */
export function firstTarget(
  name: SpecimenName | null,
  quantity: Quantity,
  notebook: Notebook,
  broughtInto: InvestigationId | null,
): ImportTarget {
  if (!name) return newInvestigation(quantity, null);
  const isSame = (id: InvestigationId): boolean =>
    notebook.investigations.has(id) &&
    (name.investigation === ''
      ? broughtInto === null || broughtInto === id
      : notebook.investigations.get(id)?.title === name.investigation);
  const specimen = [...notebook.specimens.values()].find(
    (each) => each.name === name.specimen && isSame(each.investigation),
  );
  if (specimen) return { kind: 'existing', specimen: specimen.id };
  const isAsked = name.investigation !== '' || broughtInto !== null;
  const investigation = isAsked ? [...notebook.investigations.keys()].find(isSame) : undefined;
  if (!investigation) return newInvestigation(quantity, name);
  const specimenName = name.specimen.slice(0, longestName);
  return { kind: 'new-specimen', investigation, specimenName };
}

export const newInvestigation = (
  quantity: Quantity,
  name: SpecimenName | null,
): NewInvestigation => ({
  ...{ kind: 'new', quantity, origin: 'ours' },
  title: name?.investigation.slice(0, longestName) || quantityWords[quantity].title,
  specimenName: name?.specimen.slice(0, longestName) || quantityWords[quantity].specimen,
});

/** The same new investigation of another quantity; names that were only ours change with it. */
export function withQuantity(target: NewInvestigation, quantity: Quantity): NewInvestigation {
  const [before, after] = [quantityWords[target.quantity], quantityWords[quantity]];
  return {
    ...target,
    quantity,
    title: target.title === before.title ? after.title : target.title,
    specimenName: target.specimenName === before.specimen ? after.specimen : target.specimenName,
  };
}

/** What the log that the rows go to measures. */
export function quantityOfTarget(target: ImportTarget, notebook: Notebook): Quantity {
  if (target.kind === 'new') return target.quantity;
  const investigation =
    target.kind === 'existing'
      ? notebook.specimens.get(target.specimen)?.investigation
      : target.investigation;
  return (investigation && notebook.investigations.get(investigation)?.quantity) ?? 'length';
}

/** Names in the journal are at most this long. */
export const longestName = 80;
