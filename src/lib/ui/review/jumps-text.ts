import type { JumpHelp } from '#core/lessons';

/** The jumps for those who hear them: from where, how far each, and where it lands. */
export const jumpsText = ({ isBack, landings, sizes }: JumpHelp): string =>
  sizes
    .map((size, index) => {
      const way = isBack ? 'back' : 'on';
      const far = size === null ? '' : ` ${size}`;
      return `From ${said(landings[index])} go ${way}${far} to ${said(landings[index + 1])}.`;
    })
    .join(' ');

const said = (number: number | null | undefined): string =>
  number === null || number === undefined ? 'what' : String(number);
