import { askFairly } from './ask-fairly';
import { inUnits, reading, subtracting } from './fits-range';
import type { LessonFacts } from './lesson-facts';
import type { AskedQuestion, QuestionTemplate } from './question';
import { pairsOf } from './shown-counts';
import { dayLogs, type ShownLog, type ShownValue } from './shown-values';
import { aDay, aLength, aWord } from './told';

const about = {
  id: 'C13',
  level: 'between',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * C13: by how much one plant led the other on a day when both were measured; and on which day it
 * led most, where that is one day of three or more and every number is sure.
 */
export const whoLeads: QuestionTemplate = {
  ...about,
  ask: (facts) =>
    pairsOf(dayLogs(facts)).flatMap(([leader, other]) => {
      const days = sharedDays(leader, other);
      return [
        ...days.flatMap((day) => askHowFar(facts, leader, other, day)),
        ...askWhichDay(facts, leader, other, days),
      ];
    }),
};

interface SharedDay {
  readonly ahead: ShownValue;
  readonly behind: ShownValue;
  readonly lead: number;
}

const sharedDays = (leader: ShownLog, other: ShownLog): readonly SharedDay[] =>
  leader.values.flatMap((ahead) => {
    const behind = other.values.find(({ day }) => day === ahead.day);
    return behind ? [{ ahead, behind, lead: ahead.exact - behind.exact }] : [];
  });

const isSureDay = ({ ahead, behind }: SharedDay): boolean =>
  ahead.isSure && behind.isSure && ahead.unit === behind.unit;

const askHowFar = (
  facts: LessonFacts,
  leader: ShownLog,
  other: ShownLog,
  day: SharedDay,
): readonly AskedQuestion[] => {
  const { ahead, behind, lead } = day;
  if (!isSureDay(day) || lead <= 0 || behind.exact === 0) return [];
  return askFairly(about, facts, {
    blanks: { leader: aWord(leader.name), other: aWord(other.name), day: aDay(ahead.day) },
    answer: aLength(lead, ahead),
    slips: [
      { told: aLength(ahead.exact, ahead), shows: 'larger-value' },
      { told: aLength(ahead.exact + behind.exact, ahead), shows: 'added' },
      { told: aLength(behind.exact, behind), shows: 'smaller-value' },
    ],
    fits: subtracting(inUnits(ahead.exact, ahead.unit), inUnits(behind.exact, ahead.unit)),
  });
};

const askWhichDay = (
  facts: LessonFacts,
  leader: ShownLog,
  other: ShownLog,
  days: readonly SharedDay[],
): readonly AskedQuestion[] => {
  const [most, next] = days.toSorted((one, two) => two.lead - one.lead);
  if (days.length < fewestDays || !days.every(isSureDay) || !most || !next) return [];
  if (most.lead <= 0 || most.lead === next.lead) return [];
  const tallest = leader.values.reduce((best, each) => (each.exact > best.exact ? each : best));
  return askFairly(about, facts, {
    blanks: { leader: aWord(leader.name), other: aWord(other.name) },
    answer: aDay(most.ahead.day),
    slips: [
      { told: aDay(tallest.day), shows: 'tallest-day' },
      { told: aWord(leader.name), shows: 'tallest-plant' },
    ],
    fits: reading(
      ...days.flatMap(({ ahead, behind }) =>
        [ahead, behind].map(({ exact, unit }) => inUnits(exact, unit)),
      ),
    ),
    wholeSet: true,
  });
};

const fewestDays = 3;
