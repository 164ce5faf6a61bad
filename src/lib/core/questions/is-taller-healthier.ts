import { onePointPerDay } from '#core/growth';
import { fairTestOf, lightTrapNeeds, seriesOf, type Series } from '#core/series';
import { askIdea, fromGrade2, graphsOverTime, ideaSlip } from './ask-idea';
import type { LessonFacts } from './lesson-facts';
import type { QuestionTemplate } from './question';
import { aWord, anIdea } from './told';

/**
 * "It is taller: is it healthier?" Of a light test that nothing is missing from any more, where one
 * plant was the tallest on the last day that all were measured in one unit.
 */
export const isTallerHealthier: QuestionTemplate = {
  ...{ id: 'H7', level: 'behind', graphs: graphsOverTime, ranges: fromGrade2 },
  ask: (facts) => {
    const { notebook, choice, today } = facts;
    if (!fairTestOf(notebook, choice.investigation)?.lightTrap) return [];
    const logs = [...notebook.specimens.values()]
      .filter(({ investigation }) => investigation === choice.investigation)
      .flatMap(({ id }) => seriesOf(notebook, id, today) ?? []);
    const taller = tallestOf(facts, logs);
    if (!taller || lightTrapNeeds(notebook, logs, today).length > 0) return [];
    return askIdea(isTallerHealthier, facts, {
      blanks: { specimen: aWord(taller) },
      answer: anIdea('look-at-leaves-and-colour'),
      slips: [ideaSlip('taller-is-healthier')],
    });
  },
};

const tallestOf = ({ doubted, today }: LessonFacts, logs: readonly Series[]): string | null => {
  const perLog = logs.map(({ specimen, points }) => ({
    name: specimen.name,
    points: onePointPerDay(points.filter(({ day }) => day <= today)),
  }));
  const [first, ...others] = perLog.filter(({ points }) => points.length > 0);
  if (!first || others.length === 0) return null;
  const day = first.points.findLast((point) =>
    others.every(({ points }) => points.some((each) => each.day === point.day)),
  )?.day;
  const there = [first, ...others].flatMap(({ name, points }) =>
    points.filter((point) => point.day === day).map((point) => ({ name, point })),
  );
  const [tallest, next] = there.toSorted((one, other) => other.point.exact - one.point.exact);
  const isSure = there.every(
    ({ point }) => point.unit === tallest?.point.unit && !doubted.has(point.reading),
  );
  return tallest && next && isSure && tallest.point.exact > next.point.exact ? tallest.name : null;
};
