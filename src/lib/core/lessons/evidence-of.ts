import type { EvidenceNote, Notebook, PersonId, Stage } from '#core/journal';
import type { Evidence, EvidenceOf, EvidencePiece, FoundEvidence, SeenHow } from './evidence';
import { evidenceDays } from './evidence-days';
import { evidenceInAnswers } from './evidence-in-answers';
import { evidenceInDeeds } from './evidence-in-deeds';
import { evidenceInDrawings } from './evidence-in-drawings';
import { skillIds, skills } from './skill';

/**
 * What has been seen of one child, by skill: the skills of a stage, and any other that was shown.
 * Evidence is dated and can be opened; it is never added up to a score.
 *
 * It comes from a grown-up's notes, answers in talk, items of the daily review that may rest,
 * finished drawings, questions of the child's own, and the log. What was taken back does not count.
 * A note stands in place of what it is attached to, so that one deed is one piece. Whose a piece
 * is: its author's; where nobody is named, the child's if there is only one in the notebook, else
 * nobody's, until a note says whose. An answer with notes about other children only is theirs,
 * whoever was chosen on the device. Another person's pieces are never this child's.
 *
 * @param timeZone the family's IANA time zone: the day of a drawing is where they are
 * @example
 * evidenceOf(foldEntries([]), 'no-such-child', 'grade-2', 'UTC').skills.every(({ seen }) => seen === 'not-yet') // => true
 * evidenceOf(foldEntries([]), 'no-such-child', 'grade-1', 'UTC').skills.some(({ skill }) => skill.id === 'draws-line-plot') // => false
 */
export const evidenceOf = (
  notebook: Notebook,
  person: PersonId,
  stage: Stage,
  timeZone: string,
): Evidence => {
  const findings = [
    ...evidenceInAnswers(notebook),
    ...evidenceInDrawings(notebook, timeZone),
    ...evidenceInDeeds(notebook, timeZone),
  ];
  const found = findings.flatMap((each) => ('found' in each ? [each.found] : []));
  const notes = notebook.evidence.filter(({ takenBack }) => takenBack === null);
  const mine = notes.filter((note) => note.person === person);
  const isOnes = ownership(notebook, person);
  const pieces = [
    ...mine.flatMap((note) => pieceOfNote(note, found)),
    ...found
      .filter((each) => isOnes(each.author) === 'own' && !isGivenAway(each, person, notes))
      .flatMap((each) => piecesOf(each, mine)),
  ].sort(newestFirst);
  const unread = findings.flatMap((each) =>
    'unread' in each && isOnes(each.author) !== 'others' ? [each.unread] : [],
  );
  return {
    skills: skills
      .map((skill) => {
        const own = pieces.filter((piece) => piece.skill === skill.id);
        return { skill, seen: seenIn(own), pieces: own };
      })
      .filter(({ skill, pieces: own }) => skill.serves[stage] !== undefined || own.length > 0),
    nobodys: found
      .filter((each) => canBeGiven(each) && isOnes(each.author) === 'nobodys')
      .filter((each) => !notes.some((note) => isAttached(note, each)))
      .sort(newestFirst),
    unread: [...unread, ...mine.flatMap(unreadNote)],
  };
};

/** Whose what somebody wrote is. */
const ownership = (
  { people }: Notebook,
  person: PersonId,
): ((author: PersonId | null) => 'own' | 'others' | 'nobodys') => {
  const children = [...people.values()].filter(({ role }) => role === 'child');
  const isOnlyChild = children.length === 1 && children[0]?.id === person;
  return (author) => {
    if (author === person || (author === null && isOnlyChild)) return 'own';
    return author !== null && people.has(author) ? 'others' : 'nobodys';
  };
};

const pieceOfNote = (
  note: EvidenceNote,
  found: readonly FoundEvidence[],
): readonly EvidencePiece[] => {
  const skill = skillIds.find((id) => id === note.skill);
  if (!skill) return [];
  const { id, day, at, how, drawing, answer } = note;
  const answered = found.find((each) => each.id === answer && canBeGiven(each));
  const drawn = found.find((each) => each.id === drawing && each.of.kind === 'drawing');
  const of = [
    ...(drawing === undefined
      ? []
      : [drawn?.of ?? ({ kind: 'drawing', drawing, graph: null } as const)]),
    ...(answered ? [answered.of] : []),
  ];
  return [{ id, skill, day, at, how, note, of }];
};

const unreadNote = ({ id, skill }: EvidenceNote): Evidence['unread'] =>
  skillIds.some((each) => each === skill) ? [] : [{ id, why: 'not-a-skill' }];

const piecesOf = (
  { skills: shown, ...found }: FoundEvidence,
  notes: readonly EvidenceNote[],
): readonly EvidencePiece[] =>
  shown
    .filter((skill) => !notes.some((note) => note.skill === skill && isAttached(note, found)))
    .map((skill) => {
      const { id, day, at, how, of } = found;
      return { id, skill, day, at, how, note: null, of: [of] };
    });

const isAttached = (
  { drawing, answer }: EvidenceNote,
  { id }: Pick<FoundEvidence, 'id'>,
): boolean => id === answer || id === drawing;

/** Whether notes say of an answer that it was given by others, and none that it was this one's. */
const isGivenAway = (
  { id }: FoundEvidence,
  person: PersonId,
  notes: readonly EvidenceNote[],
): boolean => {
  const about = notes.filter(({ answer }) => answer === id);
  return about.length > 0 && about.every((note) => note.person !== person);
};

/** What a note can be attached to, so that it is said whose it is. */
const canBeGiven = ({ of }: FoundEvidence): boolean => attachable.has(of.kind);

const attachable: ReadonlySet<EvidenceOf['kind']> = new Set([
  ...(['answer', 'own-answer', 'review', 'own-question', 'drawing'] as const),
]);

/** A day counts once, however much was shown on it. */
const seenIn = (pieces: readonly EvidencePiece[]): SeenHow => {
  const daysAlone = evidenceDays(pieces).filter(({ how }) => how === 'alone');
  if (daysAlone.length >= daysForOften) return 'often';
  return pieces.length > 0 ? 'sometimes' : 'not-yet';
};

/** Once may be luck and twice a good day (common practice, no source). */
const daysForOften = 3;

const newestFirst = (
  left: Pick<FoundEvidence, 'day' | 'at' | 'id'>,
  right: Pick<FoundEvidence, 'day' | 'at' | 'id'>,
): number => later(left.day, right.day) || later(left.at, right.at) || later(left.id, right.id);

const later = (left: string, right: string): number => (left === right ? 0 : left < right ? 1 : -1);
