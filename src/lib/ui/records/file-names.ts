import type { CivilDay } from '#core/calendar';

/** The name of a backup file: `morning-measure-2026-03-09.json`. */
export const backupFileName = (day: CivilDay): string => `morning-measure-${day}.json`;

/** The name of a table of one log, or of all logs, that every system can keep. */
export function tableFileName(title: string | null, day: CivilDay): string {
  const plain = (title ?? '')
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `${plain === '' ? 'morning-measure-logs' : plain}-${day}.csv`;
}
