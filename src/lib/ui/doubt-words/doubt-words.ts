import type { Quantity } from '#core/journal';
import { formatMeasured, isLengthUnit, type Measured, type Unit } from '#core/measure';
import type { Doubt } from '#core/series';

/**
 * What may be answered to a doubt. The first three are answers about the reading; the others set
 * the log right by taking the reading back.
 */
export type DoubtDeed =
  'read-so' | 'look-again' | 'other-unit' | 'no-plant' | 'missed' | 'no-sun' | 'other-plant';

/** What the question speaks of beside the doubt itself. */
export interface DoubtedFacts {
  readonly measured: Measured;
  readonly quantity: Quantity;
}

/**
 * The question of a doubt, as a child is asked it: kind, in short sentences, and never telling the
 * number it may have been. It names what was written, not what was read before.
 */
export function doubtQuestion(doubt: Doubt, { measured, quantity }: DoubtedFacts): string {
  const wrote = `You wrote ${formatMeasured(measured)}.`;
  switch (doubt.kind) {
    case 'zero-or-missed':
      return `${wrote} Was there a plant? Or did we miss this day?`;
    case 'other-side':
      return `${wrote} Which side of the ruler did you use? Look at the letters.`;
    case 'ten-times-too-long':
      return `${wrote} ${doubt.perhapsUnit ? `${whichUnit(measured.unit, 'mm')} ` : ''}${asTallAs(measured)}`;
    case 'ten-times-too-short':
      return doubt.perhapsUnit
        ? `${wrote} ${whichUnit(measured.unit, 'cm')}`
        : `${wrote} Read me the number again. Go slow.`;
    case 'digits-swapped':
      return `${wrote} Point to the tens. Point to the ones.`;
    case 'stand-counted':
      return `${wrote} Where did your ruler start? Point to it.`;
    case 'ruler-upside-down':
      return `${wrote} Which end of the ruler is on the soil?`;
    case 'other-plant':
      return `${wrote} Whose height is this?`;
    case 'same-number-again':
      return `Still ${formatMeasured(measured)}? Let us look at it, you and I.`;
    case 'shrank':
      return `${wrote} Did the stem bend? Did the soil rise? Did the tip break?`;
    case 'big-jump':
      return 'Wow, a big change! Shall we measure once more?';
    case 'past-the-cap':
      return `${wrote} That is ${quantity === 'rain' ? 'a lot' : 'very long'}! Shall we measure once more?`;
    case 'rain-unit':
      return `${wrote} That is a lot! ${whichUnit(measured.unit, doubt.perhapsUnit)}`;
    case 'rain-as-before':
      return `${wrote} That is the same as last time. Did you pour it out?`;
    case 'rain-though-dry':
      return 'The sky was dry. Was it dew? Did a hose drip?';
    case 'shadow-zero':
      return `${wrote} Was there no sun?`;
    case 'midday-longer':
      return 'At noon a shadow is short. Is the time right? Was it before noon or past noon?';
    case 'shadow-not-as-before':
      return `${wrote} Is it the same stick? Is it the same place?`;
  }
}

/** The words on the button of an answer. */
export function answerWords(deed: DoubtDeed, doubt: Doubt): string {
  switch (deed) {
    case 'read-so':
      return doubt.kind === 'zero-or-missed' ? 'Yes, it was 0' : 'Yes, I read that';
    case 'look-again':
      return 'I want to look again';
    case 'other-unit':
      return 'It is a different unit';
    case 'no-plant':
      return 'There was no plant to measure';
    case 'missed':
      return 'We missed this day';
    case 'no-sun':
      return 'There was no sun';
    case 'other-plant':
      return doubt.kind === 'other-plant' ? `It is ${doubt.name}’s` : 'It is from another plant';
  }
}

/** What else stands beside a doubt. */
export const doubtWords = {
  somethingElse: 'Something else',
  lookNow: 'Look again. What do you read now?',
  writeNow: 'Write what I read now',
  keep: (measured: Measured) => `Keep ${formatMeasured(measured)}`,
  time: 'What time was it?',
} as const;

/** A child knows how tall a child is: the middle of six-year-olds stands at 115 cm (from memory). */
const asTallAs = ({ exact }: Measured): string =>
  exact >= tallestHeldUpExact ? 'Are you as tall as that?' : 'Show me that with your hands.';

/** What a child can show between two hands. */
const tallestHeldUpExact = 900_000_000;

const whichUnit = (written: Unit, perhaps: 'mm' | 'cm'): string =>
  `Is it ${unitNames[isLengthUnit(written) ? written : perhaps]} or ${unitNames[perhaps]}?`;

const unitNames: Readonly<Record<Exclude<Unit, 'count'>, string>> = {
  in: 'inches',
  ft: 'feet',
  yd: 'yards',
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
};
