import { daysBetween } from '#core/calendar';
import { exactPerUnit, markById } from '#core/measure';
import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate } from './question';
import { dayLogs } from './shown-values';
import { aDay, aWord } from './told';

const about = {
  id: 'C7',
  level: 'between',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * C7: between which two readings it grew most, and over how many days. Only where all readings are
 * equally far apart, all are sure, and one stretch leads the next by two units or more.
 */
export const whenGrewMost: QuestionTemplate = {
  ...about,
  ask: (facts) =>
    dayLogs(facts).flatMap(({ name, measured, values }) => {
      if (measured === 'rain' || values.some(({ isSure }) => !isSure)) return [];
      const stretches = values.slice(1).flatMap((to, index) => {
        const from = values[index];
        if (!from) return [];
        return [{ from, to, grown: to.exact - from.exact, gapDays: daysBetween(from.day, to.day) }];
      });
      const isEven = new Set(stretches.map(({ gapDays }) => gapDays)).size === 1;
      const [most, next] = stretches.toSorted((one, other) => other.grown - one.grown);
      if (!isEven || !most || !next) return [];
      const marks = values.map(({ readMark }) => markById(readMark).exact);
      const unit = Math.max(exactPerUnit(most.to.unit), ...marks);
      if (most.grown <= 0 || most.grown - next.grown < leadUnits * unit) return [];
      const tallest = values.reduce((best, each) => (each.exact > best.exact ? each : best));
      return askFairly(about, facts, {
        blanks: { plant: aWord(name), measured: aWord(measured) },
        answer: {
          ...{ kind: 'interval', from: most.from.day, to: most.to.day },
          gapDays: most.gapDays,
        },
        slips: [{ told: aDay(tallest.day), shows: 'tallest-day' }],
        fits: reading(...values.map(({ exact }) => inUnits(exact, most.to.unit))),
        wholeSet: true,
      });
    }),
};

const leadUnits = 2;
