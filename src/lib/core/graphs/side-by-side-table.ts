import type { Series, SeriesDay } from '#core/series';
import type { ValueRow, ValueTable } from './graph-table';
import { dayLabels } from './place-labels';
import type { ToldIn } from './table-choice';
import { tableHead, valueOfDay } from './value-tables';

/**
 * The values of several logs on the days they share, neighbours on each day: logs that are cut to
 * their days. A day on which not every log has a number has no place: there is nothing to compare.
 * Not part of the public door.
 */
export const sideBySideTable = (logs: readonly Series[], told: ToldIn): ValueTable => {
  const [first, ...others] = logs;
  if (!first) throw new Error('A table needs a log');
  const days = sharedDays(first, others);
  const labels = dayLabels(days.map(([{ day }]) => day));
  return {
    ...tableHead(first, told),
    rows: days.flatMap((ofLogs, index) =>
      ofLogs.map((day, series): ValueRow => ({
        label: `${labels[index]} ${logs[series]?.specimen.name}`,
        ...{ day: day.day, series },
        ...valueOfDay(logs[series] as Series, day, told),
      })),
    ),
  };
};

type DayOfLogs = readonly [SeriesDay, ...SeriesDay[]];

/** The days with a number in every log, each as it is in each of them. Not part of the public door. */
export const sharedDays = (first: Series, others: readonly Series[]): readonly DayOfLogs[] =>
  first.days.flatMap((day): readonly DayOfLogs[] => {
    const beside = others.flatMap(({ days }) => days.filter((each) => each.day === day.day));
    const ofLogs: DayOfLogs = [day, ...beside];
    const isShared =
      ofLogs.length === others.length + 1 && ofLogs.every(({ state }) => state === 'number');
    return isShared ? [ofLogs] : [];
  });
