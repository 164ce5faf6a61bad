import type { Quantity, Stage } from '#core/journal';
import type { MarkId } from '#core/measure';
import type { IconName } from '#ui/icons';
import { childTasks, quantityIcons } from './day-words';

interface QuantityWords {
  readonly icon: IconName;
  /** For the grown-up, choosing. */
  readonly name: string;
  readonly about: string;
  /** What the card says to begin with; the family changes it as it likes. */
  readonly title: string;
  readonly question: string;
  readonly specimen: string;
  readonly startedLabel: string;
  readonly where: string;
  readonly tool: string;
  readonly when: string;
  readonly standLabel: string;
  /** For the child, on the day. */
  readonly childTask: string;
}

export const quantityWords: Readonly<Record<Quantity, QuantityWords>> = {
  'plant-height': {
    icon: quantityIcons['plant-height'],
    name: 'A seedling grows',
    about: 'Sow now; the first reading comes in one to two weeks. Three to five weeks in all.',
    title: 'Our seedling',
    question: 'How tall will our seedling grow?',
    specimen: 'My bean',
    startedLabel: 'Sown on',
    where: 'From the soil to the growing tip, not to the top of the tallest leaf.',
    tool: 'The same ruler, standing on the soil, zero end down.',
    when: 'Every morning, before watering.',
    standLabel: 'How tall is the pot?',
    childTask: childTasks['plant-height'],
  },
  rain: {
    icon: quantityIcons.rain,
    name: 'Rain in a gauge',
    about: 'Any straight-sided container in the open. Dry days are readings too: they are 0.',
    title: 'Our rain',
    question: 'How much rain falls here?',
    specimen: 'Our gauge',
    startedLabel: 'Set up on',
    where: 'From the flat bottom of the gauge to the top of the water.',
    tool: 'A ruler with zero at its very edge, or the marks on the gauge.',
    when: 'Every morning at the same time; then empty it.',
    standLabel: '',
    childTask: childTasks.rain,
  },
  shadow: {
    icon: quantityIcons.shadow,
    name: 'A stick’s shadow',
    about: 'One sunny day, every hour; or three set times a day for a week.',
    title: 'Our shadow',
    question: 'When is the shadow shortest?',
    specimen: 'Our stick',
    startedLabel: 'Set up on',
    where: 'From the foot of the stick to the tip of its shadow, along the ground.',
    tool: 'A tape. Mark the tip with chalk first, and write the time.',
    when: 'Every hour while the sun shines.',
    standLabel: 'How tall is the stick?',
    childTask: childTasks.shadow,
  },
  length: {
    icon: quantityIcons.length,
    name: 'Another length',
    about: 'A root in a jar, a candle, an icicle, the water in a dish: anything that changes.',
    title: 'Our lengths',
    question: 'How does it change?',
    specimen: 'The thing we measure',
    startedLabel: 'Begun on',
    where: 'From one end to the other, always the same two ends.',
    tool: 'The same ruler, lined up at zero.',
    when: 'Every morning.',
    standLabel: '',
    childTask: childTasks.length,
  },
  'daily-kind': {
    icon: quantityIcons['daily-kind'],
    name: 'What kind of day',
    about: 'One word a day, chosen from three or four. Ready for a picture graph after eight days.',
    title: 'Our days',
    question: 'Which kind of day comes most?',
    specimen: 'Our sky',
    startedLabel: 'Begun on',
    where: 'Look out of the same window.',
    tool: 'Your eyes.',
    when: 'Every day at the same time.',
    standLabel: '',
    childTask: childTasks['daily-kind'],
  },
};

export const stageWords: Readonly<Record<Stage, string>> = {
  'grade-1': 'First grade (about 6)',
  'grade-2': 'Second grade (about 7)',
  'grade-3': 'Third grade (about 8)',
};

/** What a mark is called when a reading is said to be "to the nearest ...". */
export const markWords: Readonly<Record<MarkId, string>> = {
  '1 yd': 'whole yard',
  '1 ft': 'whole foot',
  '1 in': 'whole inch',
  '1/2 in': 'half inch',
  '1/4 in': 'quarter inch',
  '1/8 in': 'eighth of an inch',
  '1/16 in': 'sixteenth of an inch',
  '0.1 in': 'tenth of an inch',
  '0.01 in': 'hundredth of an inch',
  '1 m': 'whole metre',
  '0.1 m': 'tenth of a metre',
  '1 cm': 'whole centimetre',
  '0.5 cm': 'half centimetre',
  '1 mm': 'millimetre',
  '0.1 mm': 'tenth of a millimetre',
  '1': 'whole number',
};
