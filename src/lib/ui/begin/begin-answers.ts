import type { CivilDay } from '#core/calendar';
import { shapes } from '#core/journal';
import type { EntryDraft, InvestigationId, PersonId, SpecimenId, Stage } from '#core/journal';
import { unitAndMark, type Starter, type UnitFamily } from '#core/lessons';
import { parseMeasured, type MarkId, type Unit } from '#core/measure';
import type { NotebookState } from '#notebook';
import { quantityWords } from '#ui/words';

/** What the set-up card asks, as it stands in its fields. */
export interface BeginAnswers {
  starter: Starter;
  /** A person already in the notebook, or a nickname for a new one, or neither. */
  person: PersonId | null;
  nickname: string;
  stage: Stage;
  title: string;
  question: string;
  /** One name for each plant, gauge or stick. */
  specimens: string[];
  startedOn: CivilDay;
  unit: Unit;
  mark: MarkId;
  kinds: string[];
  weekdays: number[];
  where: string;
  tool: string;
  when: string;
  standHeight: string;
}

export function firstAnswers(
  starter: Starter,
  today: CivilDay,
  stage: Stage,
  family: UnitFamily,
): BeginAnswers {
  const words = quantityWords[starter.quantity];
  return {
    starter,
    person: null,
    nickname: '',
    stage,
    title: words.title,
    question: words.question,
    specimens: [words.specimen],
    startedOn: today,
    ...unitAndMark(starter.quantity, stage, family),
    kinds: [...starter.kinds],
    weekdays: [...starter.weekdays],
    where: words.where,
    tool: words.tool,
    when: words.when,
    standHeight: '',
  };
}

/** The entries that begin an investigation as the card describes it. */
export function beginDrafts(
  answers: BeginAnswers,
  notebook: NotebookState,
): { drafts: EntryDraft[]; specimen: SpecimenId; author: PersonId | null } {
  const words = quantityWords[answers.starter.quantity];
  const investigation = notebook.newId<InvestigationId>();
  const names = answers.specimens.map((name) => name.trim()).filter((name) => name !== '');
  const specimens = (names.length > 0 ? names : [words.specimen]).map((name) => ({
    id: notebook.newId<SpecimenId>(),
    name: name.slice(0, 80),
  }));
  const newcomer = answers.nickname.trim().slice(0, 80);
  const author = newcomer === '' ? answers.person : notebook.newId<PersonId>();
  const stand = parseMeasured(answers.standHeight, { unit: answers.unit });
  const drafts: EntryDraft[] = [
    ...begunDraft(notebook),
    ...(newcomer === '' || !author ? [] : [personDraft(author, newcomer, answers.stage, notebook)]),
    {
      kind: 'investigation-begun',
      investigation,
      title: answers.title.trim().slice(0, 80) || words.title,
      question: answers.question.trim().slice(0, 500),
      quantity: answers.starter.quantity,
      unit: answers.unit,
      mark: answers.mark,
      kinds: answers.kinds.map((kind) => kind.trim().slice(0, 80)).filter((kind) => kind !== ''),
      weekdays: answers.weekdays,
      where: answers.where.slice(0, 500),
      tool: answers.tool.slice(0, 500),
      when: answers.when.slice(0, 500),
      origin: 'ours',
    },
    ...specimens.map(({ id, name }): EntryDraft => ({
      kind: 'specimen-added',
      specimen: id,
      investigation,
      name,
      startedOn: answers.startedOn,
      ...(stand.ok ? { standHeight: stand.value } : {}),
    })),
  ];
  return { drafts, specimen: specimens[0]!.id, author };
}

const begunDraft = (notebook: NotebookState): EntryDraft[] =>
  notebook.contents.title === null ? [{ kind: 'notebook-begun', title: 'Our notebook' }] : [];

/** A newcomer gets the first shape and colour that nobody has yet. */
function personDraft(
  person: PersonId,
  name: string,
  stage: Stage,
  notebook: NotebookState,
): EntryDraft {
  const place = notebook.contents.people.size;
  return {
    kind: 'person-added',
    person,
    name,
    shape: shapes[place % shapes.length]!,
    colour: place % 8,
    role: 'child',
    stage,
    hand: 'right',
  };
}
