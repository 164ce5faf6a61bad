import type { GraphKind, TableChoice } from '#core/graphs';
import type { Stage } from '#core/journal';
import type { RawLog } from './raw-log';

/** A graph that is asked about, and what is written on it: as somebody sees it on the table. */
export interface RawAsking {
  readonly log: RawLog;
  readonly source: TableChoice['source'];
  /** The specimens that are shown. */
  readonly specimens: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly told: TableChoice['told'];
  readonly mostKinds: number | null;
  readonly graph: GraphKind;
  readonly stage: Stage;
  readonly today: string;
  /** The numbers written up the side, or along the bottom. */
  readonly labels: readonly string[];
  /** Whether a grown-up gives the frame, with a scale by fives and tens. */
  readonly isGiven: boolean;
  /** How many things one picture stands for; null where there is no key. */
  readonly key: number | null;
}

export const nameOf = ({ log }: RawAsking, specimen: string): string =>
  log.specimens.find(({ id }) => id === specimen)?.name ?? '';

/** The specimen on the graph that is called so. */
export const specimenNamed = (asking: RawAsking, name: string): string | null =>
  asking.specimens.find((each) => nameOf(asking, each) === name) ?? null;
