import { addDays, type CivilDay } from '#core/calendar';
import { importDrafts, type ImportMapping, type ImportPreview } from '#core/exchange';
import type { EntryDraft, InvestigationId, SpecimenId } from '#core/journal';
import { unitAndMark } from '#core/lessons';
import type { NotebookState } from '#notebook';
import { quantityWords } from '#ui/words';
import { longestName, type ImportTarget, type NewInvestigation } from './import-target';
import type { PreviewFacts } from './preview-facts';

/** The entries that bring a previewed table in, and the log they stand in. */
export function targetDrafts(
  preview: ImportPreview,
  facts: PreviewFacts,
  target: ImportTarget,
  days: ImportMapping['days'],
  notebook: NotebookState,
): { readonly drafts: readonly EntryDraft[]; readonly specimen: SpecimenId } {
  if (target.kind === 'existing') {
    return { drafts: importDrafts(preview, target.specimen), specimen: target.specimen };
  }
  const specimen = notebook.newId<SpecimenId>();
  const investigation =
    target.kind === 'new' ? notebook.newId<InvestigationId>() : target.investigation;
  const quantity = target.kind === 'new' ? target.quantity : 'length';
  const drafts: readonly EntryDraft[] = [
    ...(notebook.contents.title === null ? [notebookBegun] : []),
    ...(target.kind === 'new' ? [investigationBegun(investigation, target, facts)] : []),
    {
      ...{ kind: 'specimen-added', specimen, investigation },
      name: target.specimenName.trim().slice(0, longestName) || quantityWords[quantity].specimen,
      startedOn: dayNought(days) ?? facts.days?.first ?? notebook.today,
    },
    ...importDrafts(preview, specimen),
  ];
  return { drafts, specimen };
}

/** Where days are only numbered, the log begins on day 0, so that its days keep their numbers. */
const dayNought = (days: ImportMapping['days']): CivilDay | null =>
  days.as === 'number' && days.anchor ? addDays(days.anchor.day, -days.anchor.number) : null;

const notebookBegun: EntryDraft = { kind: 'notebook-begun', title: 'Our notebook' };

/** How it was measured is only known of our own readings. */
function investigationBegun(
  investigation: InvestigationId,
  { quantity, title, origin }: NewInvestigation,
  { usual, words, weekdays }: PreviewFacts,
): EntryDraft {
  const said = quantityWords[quantity];
  const { unit, mark } = usual ?? unitAndMark(quantity, 'grade-2', 'centimetres');
  const isOurs = origin === 'ours';
  return {
    ...{ kind: 'investigation-begun', investigation, quantity, unit, mark, origin },
    title: title.trim().slice(0, longestName) || said.title,
    question: said.question,
    kinds: words.slice(0, mostKinds).map(({ word }) => word),
    weekdays: [...weekdays],
    where: isOurs ? said.where : '',
    tool: isOurs ? said.tool : '',
    when: isOurs ? said.when : '',
  };
}

const mostKinds = 12;
