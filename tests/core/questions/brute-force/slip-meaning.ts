import type { AskedQuestion, SlipId, Told } from '#core/questions';
import { inUnitsOf, type Sum } from './reckoned';

const numberOf = (told: Told): number | null => {
  if (told.kind === 'count') return told.count;
  return told.kind === 'length' ? inUnitsOf(told) : null;
};

/** What a slip of this name comes to, where the sums of the question say so; else null. */
const meant = (shows: SlipId, sums: readonly Sum[], answer: Told): number | null => {
  const less = sums.find(({ kind }) => kind === 'less')?.numbers;
  const more = sums.find(({ kind }) => kind === 'more')?.numbers;
  const share = sums.find(({ kind }) => kind === 'share')?.numbers;
  const right = numberOf(answer);
  switch (shows) {
    case 'added':
      return (more ?? less)?.reduce((sum, each) => sum + each, 0) ?? null;
    case 'larger-value':
      return less?.[0] ?? null;
    case 'smaller-value':
      return less?.[1] ?? null;
    case 'whole-jump':
      return share?.[0] ?? null;
    case 'one-part-only':
      return more ? Math.max(...more) : null;
    case 'off-by-one':
      return right === null ? null : right + 1;
    case 'forgot-unit':
      return right;
    case 'blank-is-zero':
      return 0;
    default:
      return null;
  }
};

/** Every slip is the number that its name says. */
export const slipsMeantOtherwise = (
  { slips, answer }: AskedQuestion,
  sums: readonly Sum[],
): readonly string[] =>
  slips.flatMap(({ told, shows }) => {
    const [number, expected] = [numberOf(told), meant(shows, sums, answer)];
    const isRight = number === null || expected === null || Math.abs(number - expected) < 1e-9;
    return isRight ? [] : [`${shows} is ${expected}, said to be ${number}`];
  });
