import type { Quantity } from '#core/journal';
import type { GraphKind, GraphTable } from './graph-table';

/** A graph that a table must not become, and why. */
export interface NotRight {
  readonly graph: GraphKind;
  readonly why: NotRightReason;
}

export type NotRightReason =
  /** A kind of day is no place on a ruler. */
  | 'kinds-are-no-numbers'
  /** Kinds have no order and nothing between them to join. */
  | 'kinds-have-no-order'
  /** A picture stands for a thing that is counted; a length is measured. */
  | 'lengths-are-not-counted'
  /** Piled on a ruler, nobody sees any more which day came when. */
  | 'order-would-be-lost'
  /** Between two days' rain, or two plants, there was nothing: a join would say there was. */
  | 'nothing-in-between'
  /** A bar for each would not show how often each length came. */
  | 'piles-would-be-lost';

/**
 * The graphs that a table must not become, with the reason for each. (What may go where: common
 * practice, no source.)
 * @example
 * notRightFor('measures', 'rain').map((each) => each.graph) // => ['picture-graph', 'bar-graph', 'line-graph']
 * notRightFor('values', 'rain').at(-1) // => { graph: 'line-graph', why: 'nothing-in-between' }
 */
export const notRightFor = (form: GraphTable['form'], quantity: Quantity): readonly NotRight[] => {
  switch (form) {
    case 'counts':
      return [
        { graph: 'line-plot', why: 'kinds-are-no-numbers' },
        { graph: 'line-graph', why: 'kinds-have-no-order' },
      ];
    case 'values':
      return [
        { graph: 'picture-graph', why: 'lengths-are-not-counted' },
        { graph: 'line-plot', why: 'order-would-be-lost' },
        ...(quantity === 'rain' ? [joined] : []),
      ];
    case 'measures':
      return [
        { graph: 'picture-graph', why: 'lengths-are-not-counted' },
        { graph: 'bar-graph', why: 'piles-would-be-lost' },
        joined,
      ];
    case 'times':
      return [
        { graph: 'picture-graph', why: 'lengths-are-not-counted' },
        { graph: 'line-plot', why: 'order-would-be-lost' },
      ];
  }
};

const joined: NotRight = { graph: 'line-graph', why: 'nothing-in-between' };
