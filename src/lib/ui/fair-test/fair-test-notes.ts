import type { DifferenceChoice } from '#core/series';

/** What the grown-up reads about a fair test. */
export const fairTestNotes = {
  needsTwo:
    'A fair test needs two or more plants in one investigation. Add one in Set-up, under this investigation: “Measure one more beside it”.',
  setUp: 'Go to Set-up',
  notForThis:
    'A fair test here compares things that grow: plants, or another length. Rain, shadows and kinds of day have their own questions.',
  names:
    'Plan it before you sow. Start with three seeds on each side (common practice): one dead seed must not decide. Names such as “Bean in light” and “Bean in the dark” help to tell the plants apart.',
  begun:
    'Readings have begun, so this plan says from now on what you meant to keep the same. The card will say that it was written after the first reading.',
  writtenAfter: 'Written after the first reading',
  lightTrap:
    'Why more than height: seedlings in the dark are often taller at first. They are long, pale and weak, and live on the seed’s store. Height alone would mislead. Look at the leaves, the colour and whether it stands as well, for three weeks or more, and then ask: taller or healthier?',
  moreLooks: 'A light test needs at least one of these beside the height.',
  draws:
    'A child is drawing a graph of these plants. The notebook shows its own line graph when that drawing is done.',
  toDrawing: 'Go to the drawing',
  graph: 'The line graph, for the grown-up',
  mixed: 'Days on which the two were read in different units are left out of this table.',
  leavesWith: 'Leaves are counted with the reading, on Today.',
  onePair:
    'This is about these plants only. Ask whether another family would find the same; to be more sure, sow again with more seeds.',
  print: 'Print the card',
  change: 'Change the plan',
  keep: 'Leave it as it was',
  writeDifference: 'Write it under the plan',
  later: 'Something else was different',
  unticked: 'Not ticked as the same',
  neverUp: 'never came up: a finding, and not a height of 0',
  notUpYet: 'not up yet',
} as const;

/** How to keep to one difference, for the choices that easily bring a second one with them. */
export const differenceNotes: Readonly<Partial<Record<DifferenceChoice, string>>> = {
  light:
    'Keep both in the same place and stand a box with air holes over one: another place would bring other warmth too.',
  water:
    'Water both until both are up, and only then differ: a dry seed often never comes up. If it does not, that is written as a state and never as 0.',
  place:
    'Another place brings other light and other warmth with it. Tick only what is truly the same.',
};
