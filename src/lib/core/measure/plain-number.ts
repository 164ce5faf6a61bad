import { failed, ok, type Result } from '#core/base';
import type { Edit, Fault } from './fault';
import type { Token } from './tokens';

/** Digits with at most one decimal sign, not yet a value: `12`, `12.5`, `.5`. */
export interface PlainNumber {
  readonly whole: string;
  /** Undefined when no decimal sign was written. */
  readonly decimals?: string;
  readonly start: number;
  readonly end: number;
  /** The index of the token after it. */
  readonly next: number;
}

/** The number that starts at a token. Thousands signs are never read as such, only offered. */
export const readPlainNumber = (
  tokens: readonly Token[],
  index: number,
  decimal: '.' | ',',
): Result<PlainNumber, Fault> => {
  const run = runOfDigits(tokens, index);
  const start = run[0]?.start ?? 0;
  const end = run.at(-1)?.end ?? start;
  const next = index + run.length;
  const written = run.map(characters).join('');
  if (!/\d/.test(written)) return failed({ kind: 'not-a-number', start, end, expected: 'number' });
  const [whole = '', decimals, ...more] = written.split(decimal);
  if (more.length === 0 && /^\d*$/.test(whole)) {
    if (decimals === undefined) return ok({ whole, start, end, next });
    if (/^\d+$/.test(decimals)) return ok({ whole: whole || '0', decimals, start, end, next });
  }
  const edits = meanings(written, decimal).map((replacement): Edit => ({
    start,
    end,
    replacement,
  }));
  if (/[.,]$/.test(written)) {
    return failed({ kind: 'not-a-number', start: end, end, expected: 'number', edits });
  }
  return failed({ kind: edits.length > 0 ? 'ambiguous' : 'not-a-number', start, end, edits });
};

const runOfDigits = (tokens: readonly Token[], index: number): readonly Token[] => {
  const isPart = ({ kind }: Token): boolean => kind === 'digits' || kind === 'separator';
  const after = tokens.slice(index);
  const length = after.findIndex((token, place) => !isPart(token) || (place > 0 && !token.joined));
  return length < 0 ? after : after.slice(0, length);
};

const characters = (token: Token): string => {
  if (token.kind === 'digits') return token.digits;
  return token.kind === 'separator' ? token.sign : '';
};

/** What a number with strange signs may have meant, written the way this notebook writes it. */
const meanings = (written: string, decimal: '.' | ','): readonly string[] => {
  const unfinished = written.match(/^(\d+)[.,]$/)?.[1];
  if (unfinished) return [unfinished];
  const [, left, right] = written.match(/^(\d*)[.,](\d+)$/) ?? [];
  const [, groups, sign, rest] =
    written.match(/^([1-9]\d{0,2}(?:([.,])\d{3})(?:\2\d{3})*)(.*)$/) ?? [];
  const joined = groups?.replaceAll(/[.,]/g, '');
  const [, decimals] = rest?.match(/^[.,](\d+)$/) ?? [];
  const found: string[] = [];
  if (right !== undefined) found.push(`${left || '0'}${decimal}${right}`);
  if (joined && rest === '') found.push(joined);
  if (joined && decimals && !rest?.startsWith(sign ?? '')) {
    found.push(`${joined}${decimal}${decimals}`);
  }
  return found;
};
