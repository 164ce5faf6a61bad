import type { StandardCode } from '#core/graphs';

/**
 * What a standard asks for, in short and in our own words: Common Core State Standards for
 * Mathematics (2010) and the Next Generation Science Standards. The code itself stands beside it.
 * Wording of 2.MD.D, 3.MD.B and 2-LS2-1 checked; the others from memory.
 */
export const standardText = (code: StandardCode): string => standards[code];

const standards: Readonly<Record<StandardCode, string>> = {
  '1.MD.A.1': 'Grade 1: put three lengths in order.',
  '1.MD.A.2': 'Grade 1: measure with equal units laid end to end, with no gap and no overlap.',
  '1.MD.C.4': 'Grade 1: sort things into up to three kinds, count them, and say how many more.',
  '2.MD.A.1': 'Grade 2: choose a ruler or tape that suits the length, and use it.',
  '2.MD.A.2': 'Grade 2: measure one length in two units, and say why the numbers differ.',
  '2.MD.A.3': 'Grade 2: estimate lengths in inches, feet, centimetres and metres.',
  '2.MD.A.4': 'Grade 2: measure how much longer one thing is than another.',
  '2.MD.B.5': 'Grade 2: add and subtract lengths within 100, with a drawing and an equation.',
  '2.MD.B.6': 'Grade 2: show lengths, sums and differences on a number line that starts at 0.',
  '2.MD.D.9':
    'Grade 2: measure several things, or one thing several times, and show it in a line plot.',
  '2.MD.D.10':
    'Grade 2: draw picture graphs and bar graphs of up to four kinds, and solve problems with them.',
  '3.MD.B.3':
    'Grade 3: draw picture graphs and bar graphs with a scale, and solve one- and two-step problems.',
  '3.MD.B.4': 'Grade 3: measure to half and quarter inches, and show the lengths in a line plot.',
  '5.G.A.2':
    'Grade 5: place points by two numbers. Below grade 5 a line graph is a tool of science, drawn with help and not assessed.',
  'K-ESS2-1': 'Science, kindergarten: notice patterns in the weather over time.',
  '2-LS2-1':
    'Science, grade 2: plan and carry out a test of whether plants need sunlight and water, one thing at a time.',
  '3-ESS2-1': 'Science, grade 3: show the usual weather of a season in tables and graphs.',
  '5-ESS1-2':
    'Science, grade 5: show in a graph how shadows change through a day. Here it is looked at early.',
};
