import type { CivilDay } from '#core/calendar';
import { boardSlots, drawRight, exactOfLabel, type Drawing, type GraphTable } from '#core/graphs';
import type { LessonFacts, Told } from '#core/questions';
import { answerText } from '#ui/ladder-words';

/** A place of the graph that can be an answer: a day, a bar, a pile, a row. */
export interface TapPlace {
  readonly told: Told;
  /** As a child reads it. */
  readonly name: string;
  /** Where it lies on the paper, in squares. */
  readonly at: number;
  readonly width: number;
}

/** What can be said with the places of a table, in its order. */
export function tellings(facts: LessonFacts): readonly Telling[] {
  const { table, choice } = facts;
  switch (table.form) {
    case 'counts':
      return table.rows.map(({ label }) => ({ label, told: { kind: 'word', word: label } }));
    case 'values':
      return table.rows.flatMap(({ label, day }) =>
        day ? [{ label, told: { kind: 'day', day } }] : [],
      );
    case 'times':
      if (choice.source !== 'days-in-order') return [];
      return daysOf(facts).flatMap((day, place) => {
        const label = table.places[place];
        return label === undefined ? [] : [{ label, told: { kind: 'day', day } }];
      });
    case 'measures':
      return drawRight(facts.right).bottom.ticks.flatMap(({ text }) => lengthAt(text, table));
  }
}

/**
 * The places of a drawing that can be tapped for an answer. None where the names on it are not
 * those of the table: then the answers are chosen from a list.
 */
export function tapPlaces(facts: LessonFacts, drawing: Drawing): readonly TapPlace[] {
  const slots = boardSlots(drawing, drawRight(facts.right, { upright: drawing.upright }));
  const told = tellings(facts).map((each) => ({
    ...each,
    slot: slots.find(({ name }) => sameName(name, each.label)),
  }));
  if (told.some(({ slot }) => !slot)) return [];
  const places = told.flatMap(({ slot, told: said }) =>
    slot ? [{ told: said, name: answerText(said), at: slot.at, width: slot.width }] : [],
  );
  return drawing.upright
    ? places.toSorted((one, other) => one.at - other.at)
    : places.toSorted((one, other) => other.at - one.at);
}

/** What a place says, and how it is named on the graph. */
export interface Telling {
  readonly label: string;
  readonly told: Told;
}

const lengthAt = (
  text: string,
  table: Extract<GraphTable, { form: 'measures' }>,
): readonly Telling[] => {
  const exact = exactOfLabel(text, table);
  if (exact === null) return [];
  const { unit, mark } = table;
  return [{ label: text, told: { kind: 'length', exact, unit, mark } }];
};

const sameName = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();

/** The calendar days along the bottom of a line graph. */
const daysOf = ({ series, choice }: LessonFacts): readonly CivilDay[] =>
  [
    ...new Set(
      series.flatMap(({ days }) =>
        days.map(({ day }) => day).filter((day) => day >= choice.from && day <= choice.to),
      ),
    ),
  ].sort();
