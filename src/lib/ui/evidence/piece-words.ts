import type { Notebook, SpecimenId } from '#core/journal';
import type { EvidenceOf, ReviewItem } from '#core/lessons';
import { formatExact, formatMeasured } from '#core/measure';
import { graphNames } from '#ui/graph-words';
import { questionText } from '#ui/ladder-words';

/** What a piece of evidence is, in words: what was done or asked, and what the child said. */
export interface PieceWords {
  readonly what: string;
  /** Null where nothing was said, or none of it was kept. */
  readonly said: string | null;
}

type Contents = Pick<Notebook, 'specimens' | 'investigations' | 'drawings'>;

export const pieceWords = (of: EvidenceOf, contents: Contents): PieceWords => {
  switch (of.kind) {
    case 'answer':
      return { what: questionText(of.question), said: of.answer || null };
    case 'own-answer':
      return { what: of.text, said: of.said || null };
    case 'review':
      return { what: reviewText(of.item), said: of.answer || null };
    case 'own-question':
      return { what: `Asked: ${of.text}`, said: of.answer };
    case 'drawing':
      return {
        what: of.graph ? `Drew a ${graphNames[of.graph].toLowerCase()}` : 'Drew',
        said: null,
      };
    case 'tally':
      return { what: 'Sorted by hand, with a tally, before drawing', said: null };
    case 'reading':
      return { what: `Read ${formatMeasured(of.measured)}${ofSpecimen(of, contents)}`, said: null };
    case 'estimate':
      return {
        what: `Guessed ${formatMeasured(of.measured)} before measuring${ofSpecimen(of, contents)}`,
        said: null,
      };
    case 'both-sides':
      return {
        what: `Read ${formatMeasured(of.measured)} and ${formatMeasured(of.other)}${ofSpecimen(of, contents)}`,
        said: null,
      };
    case 'prediction':
      return { what: `Sealed a guess with a because${ofSpecimen(of, contents)}`, said: null };
    case 'fair-test-plan': {
      const title = contents.investigations.get(of.investigation)?.title;
      return { what: `Planned a fair test${title ? `: ${title}` : ''}`, said: null };
    }
  }
};

const ofSpecimen = (
  { specimen }: { readonly specimen: SpecimenId },
  { specimens }: Contents,
): string => {
  const name = specimens.get(specimen)?.name;
  return name ? `: ${name}` : '';
};

const reviewText = ({ task }: ReviewItem): string => {
  if (task.of === 'question') return questionText(task.question);
  if (task.of === 'sum') return sumText(task.sum);
  const { kind, unit, mark, beginsExact, endsExact } = task.ruler;
  const ends = formatExact(endsExact, unit, mark);
  return kind === 'off-zero'
    ? `Ruler: how long is a thing from ${formatExact(beginsExact, unit, mark)} to ${ends}?`
    : 'Ruler: where does a thing end, between the numbers?';
};

type Sum = Extract<ReviewItem['task'], { readonly of: 'sum' }>['sum'];

/** As an equation with a box for what was asked (Common Core 2.MD.B.5). */
const sumText = (sum: Sum): string => {
  const [start, change, result] = (['start', 'change', 'result'] as const).map((part) =>
    part === sum.unknown ? '☐' : String(sum[part]),
  );
  const unit = sum.unit === 'count' ? 'days' : sum.unit;
  return `${start} + ${change} = ${result} (${unit})`;
};
