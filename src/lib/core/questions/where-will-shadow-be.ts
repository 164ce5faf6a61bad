import { minutesIntoDay, parseClockTime, type ClockTime } from '#core/calendar';
import { shadowDays } from '#core/growth';
import type { SeriesPoint } from '#core/series';
import { askIdea, fromGrade1, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { aDay, aTime, anIdea } from './told';

/**
 * "Where will the tip of the shadow be an hour later?" From two readings of one day, only where
 * the way it goes is known: it grew after noon by the clock, or shrank and the hour asked about is
 * before eleven. Shortest is near noon, up to an hour or so later with summer time (from memory).
 */
export const whereWillShadowBe: QuestionTemplate = {
  ...{ id: 'Y9', level: 'beyond', graphs: ['bar-graph', 'line-graph'], ranges: fromGrade1 },
  ask: (facts) => {
    const { source, from, to } = facts.choice;
    if (source !== 'hour-values' && source !== 'hours-in-order') return [];
    const points = (facts.series[0]?.points ?? []).filter(({ day }) => day >= from && day <= to);
    return shadowDays(points).flatMap(({ day, readings }) => {
      const timed = readings.filter((each): each is Timed => each.time !== undefined);
      const [before, last] = timed.slice(-2);
      if (!before || !last || before.unit !== last.unit) return [];
      if (timed.some(({ reading }) => facts.doubted.has(reading))) return [];
      const time = anHourAfter(last.time);
      const way = time && wayOf(before, last, time);
      if (!way) return [];
      return askIdea(whereWillShadowBe, facts, {
        blanks: { day: aDay(day), time: aTime(time) },
        answer: anIdea(way),
        slips: [ideaSlip('same-place')],
      });
    });
  },
};

type Timed = SeriesPoint & { readonly time: ClockTime };

const wayOf = (before: Timed, last: Timed, time: ClockTime) => {
  const isAfternoon = minutesIntoDay(before.time) >= 12 * 60;
  if (last.exact > before.exact && isAfternoon) return 'longer-and-further-round';
  const isMorning = minutesIntoDay(time) <= 11 * 60;
  return last.exact < before.exact && isMorning ? 'shorter-and-further-round' : null;
};

const anHourAfter = (time: ClockTime): ClockTime | null => {
  const minutes = minutesIntoDay(time) + 60;
  if (minutes > latestMinutes) return null;
  const parts = [Math.floor(minutes / 60), minutes % 60].map((part) => `${part}`.padStart(2, '0'));
  const read = parseClockTime(parts.join(':'));
  if (!read.ok) throw new Error(`No time of day: ${parts.join(':')}`);
  return read.value;
};

/** Five in the afternoon: later the sun may be down in winter. */
const latestMinutes = 17 * 60;
