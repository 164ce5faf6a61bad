import { weekdayName, formatDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import { formatExact, formatMeasured, formatMeasuredNumber } from '#core/measure';
import type { RulerPair, StillInInches } from '#core/series';
import type { TalkCard } from './talk-card';

/** What the family reads on the page of the two number lines. */
export const compareWords = {
  name: 'One height, two numbers',
  nameOfLength: 'One length, two numbers',
  back: 'Two sides',
  none: 'Read both sides first.',
  talk: 'Talk about it',
  pairs: 'Our pairs',
  show: 'Show this one',
  shown: 'Shown above',
} as const;

/** Questions about two numbers of one length. The answers are the grown-up’s. */
export function compareTalk(
  { metric, customary }: Pick<RulerPair, 'metric' | 'customary'>,
  quantity: Quantity,
  stayed: StillInInches | undefined,
): readonly TalkCard[] {
  const thing = thingWords[quantity];
  return [
    {
      id: 'larger',
      ask: ['Which number is larger?', `Is the ${thing.noun} ${thing.more} then?`],
      answer:
        `The number in ${formatMeasured(metric)} is larger than the number in ${formatMeasured(customary)}: a centimetre is ` +
        `shorter than an inch, so more of them fit along the same ${thing.noun}. The ${thing.noun} is ` +
        `no ${thing.more}. A number says how much only together with its unit.`,
    },
    {
      id: 'sooner',
      ask: ['It grows just a little bit.', 'Which side shows it first?'],
      answer:
        'The centimetre side: its steps are smaller, so a little growth comes to the next mark sooner.',
    },
    stoppedCard(thing.noun, stayed),
    {
      id: 'fence',
      ask: ['What would you use to measure a fence?'],
      answer:
        'Feet, yards or metres: for a long thing a long unit, so that there are fewer to count. Any choice with a reason is a good answer.',
    },
    {
      id: 'friend',
      ask: ['A friend lives far away.', 'Which number will you tell?'],
      answer:
        'The one that stands on the friend’s ruler, or both. The unit has to be said in any case: a bare ' +
        `${formatMeasuredNumber(metric)} tells nothing.`,
    },
    {
      id: 'shorter',
      ask: ['Could 8 inches be shorter than 12 cm?'],
      answer:
        'No: 8 in is longer, about as long as 20 cm, though 8 is less than 12. Let the child find both places on a ruler before anybody tells.',
    },
  ];
}

const thingWords: Readonly<Record<Quantity, { readonly noun: string; readonly more: string }>> = {
  'plant-height': { noun: 'plant', more: 'taller' },
  shadow: { noun: 'shadow', more: 'longer' },
  length: { noun: 'thing', more: 'longer' },
  rain: { noun: 'rain', more: 'higher' },
  'daily-kind': { noun: 'thing', more: 'longer' },
};

/** With the family’s own two days where there are such: the inches stayed and the other side grew. */
const stoppedCard = (noun: string, stayed: StillInInches | undefined): TalkCard => {
  if (!stayed) {
    return {
      id: 'stopped',
      ask: ['The inch number stays the same for two days.', `Did the ${noun} stop?`],
      answer:
        'It need not have. It may have grown by less than comes to the next inch mark. In whole inches about half of all days show no change while a plant grows.',
    };
  }
  const { from, to, gapDays } = stayed;
  const grew = formatExact(stayed.grewExact, to.metric.unit, to.metric.mark);
  const number = formatMeasured(to.customary);
  return {
    id: 'stopped',
    ask: [
      `You read ${number} on ${weekdayName(from.day, 'long')}.`,
      `You read ${number} on ${weekdayName(to.day, 'long')} too.`,
      `Did the ${noun} stop?`,
    ],
    answer:
      `No. From ${formatDay(from.day, 'short')} to ${formatDay(to.day, 'short')} it went from ` +
      `${formatMeasured(from.metric)} to ${formatMeasured(to.metric)}: ${grew} more in ` +
      `${gapDays} ${gapDays === 1 ? 'day' : 'days'}. That is less than comes to the next inch mark.`,
  };
};

/** What children think at first, and what helps. For the grown-up. */
export const wrongIdeas: readonly { readonly idea: string; readonly help: string }[] = [
  {
    idea: '“13 is more than 5, so in centimetres it is taller.”',
    help: 'Cut one paper strip, and lay the same strip along both sides.',
  },
  {
    idea: '“13 cm and 5 in make 18.”',
    help: 'Ask: 18 of what? They are two names of one length.',
  },
  {
    idea: '“This side of the ruler is for plants.”',
    help: 'Measure a spoon with that side, and the plant with the other.',
  },
  {
    idea: 'The small marks between the numbers are counted as centimetres.',
    help: 'Put a finger on each mark that has a number, and count the spaces.',
  },
];

/** NIST Special Publication 811 (2008), Appendix B.8. */
export const exactFact =
  '1 inch is exactly 2.54 cm. That is for you: up to grade 3 nothing is worked out from one unit to the other, the child reads both. “About two and a half centimetres in an inch” may be noticed; it is not practised.';

/** How far two numbers lie apart, in a grown-up’s words. */
export function agreementWords({ agrees, differenceExact }: RulerPair): string {
  const apart = formatExact(Math.abs(differenceExact), 'cm', '1 mm');
  if (agrees) return differenceExact === 0 ? 'the same' : `agree, ${apart} apart`;
  return `${apart} apart: more than careful reading explains`;
}
