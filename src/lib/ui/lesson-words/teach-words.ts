import type { FeatureId, LessonPlan } from '#core/lessons';
import { featureText } from './feature-words';
import { listed, toldRows, unitOf } from './told-rows';

/**
 * The one feature, modelled by thinking aloud on the practice example: what to say while drawing.
 * Numbers are those of the example, which is never the family's own.
 */
export const teachText = ({ feature, example }: LessonPlan): readonly string[] => [
  featureText(feature),
  `Copy the worked example and think aloud, on practice numbers, not ours: ${told(example)}.`,
  ...aloud[feature](example),
  'Then stop: only this one thing today.',
];

type Example = LessonPlan['example'];

const told = ({ table }: Example): string => {
  const rows = toldRows(table);
  if (table.form === 'counts') return listed(rows.map(({ label, text }) => `${text} ${label}`));
  const unit = unitOf(table);
  if (table.form === 'measures') {
    return `${rows.length} ${table.seriesNames[0]} of ${listed(rows.map(({ text }) => text))} ${unit}`;
  }
  const say = ({ label, text }: (typeof rows)[number]) => {
    if (text === '') return `${label} was missed`;
    return label.startsWith('day') ? `${text} on ${label}` : `the ${label} ${text}`;
  };
  if (table.form === 'times' && table.seriesNames.length > 1) {
    const each = rows.length / table.seriesNames.length;
    return table.seriesNames
      .map((name, at) => `the ${name} ${listed(rows.slice(at * each, (at + 1) * each).map(say))}`)
      .join('; ')
      .concat(`, all in ${unit}`);
  }
  return `${listed(rows.map(say))}, all in ${unit}`;
};

const aloud: Readonly<Record<FeatureId, (example: Example) => readonly string[]>> = {
  'one-picture-each': ({ table }) => {
    const [first, second] = toldRows(table);
    return [
      `“The table says ${first!.text} ${first!.label}. I draw one picture for each: ${counted(first!.number!)}. Each one has its own square, and the first one stands at this line.”`,
      `Do the ${second!.label} together. Then ask: “Which row is longest? Could you tell without counting?”`,
    ];
  },
  'key-with-number': ({ table, right }) => {
    const key = right.keyValue ?? 1;
    const [first] = toldRows(table);
    const times = first!.number! / key;
    return [
      `“My key says that one picture is ${key} toys. I want ${first!.text} ${first!.label}, so I count by ${key}: ${listed(multiples(key, times))}. That took ${times} pictures.”`,
      'Write the key first, beside the graph. Ask: “What if somebody did not read the key?”',
    ];
  },
  'bars-from-zero': ({ table }) => {
    const [first, second] = toldRows(table);
    return [
      '“I write 0 at the bottom line, because a bar of nothing has no height. Then I go up by the same jump each time.”',
      `“For the ${first!.label} the table says ${first!.text}. My bar starts on the bottom line and ends at the line of ${first!.text}. I lay the ruler across to be sure.”`,
      `Ask before the next bar: “Where does the bar for the ${second!.label} start? Where does it end?”`,
    ];
  },
  'missed-day-keeps-place': ({ table }) => {
    const rows = toldRows(table);
    const missed = rows.find(({ number }) => number === null)!;
    return [
      `“On ${missed.label} nobody measured the snowman. I still write ${missed.label} at the bottom, and leave its place empty.”`,
      '“A bar at 0 would say that the snowman was gone. I do not know how tall it was, so I draw nothing.”',
      'Ask: “How would the graph look if I left that day out? What would somebody think?”',
    ];
  },
  'one-cross-each': ({ table }) => {
    const rows = toldRows(table);
    const twice = rows.find(
      ({ text }, index) => rows.findIndex((each) => each.text === text) < index,
    )!;
    const before = rows.find(({ text }) => text === twice.text)!;
    return [
      `“${capital(before.label)} is ${before.text} long. I find ${before.text} on the line and put one cross above it. I cross it off my list.”`,
      `“${capital(twice.label)} is ${twice.text} too. It gets a cross of its own, on top of the other.”`,
      'Ask when all are marked: “How many pencils? How many crosses? Do they agree?”',
    ];
  },
  'parts-of-a-unit': ({ table }) => {
    const rows = toldRows(table);
    const part = rows.find(({ number }) => !Number.isInteger(number))!;
    const whole = Math.floor(part.number!);
    return [
      `“Between ${whole} and ${whole + 1} I make equal jumps with small marks, as on the ruler. Each small mark has its own place.”`,
      `“${capital(part.label)} is ${part.text} long. That is more than ${whole} and less than ${whole + 1}. I count the small marks from ${whole}, and put its cross there.”`,
      'Ask: “Which is more, a half or a quarter? Show me on the line.”',
    ];
  },
  'along-then-up': ({ table }) => {
    const row = toldRows(table)[1]!;
    return [
      `“For ${row.label} I walk along the bottom with my finger until ${row.label}. Then I climb straight up to ${row.text}, and make my point.”`,
      '“I join the points day by day, with a ruler, from left to right. After the last day I stop.”',
      'Ask: “What does this one point tell us?” One day, one number.',
    ];
  },
  'gaps-are-dashed': ({ table }) => {
    const missed = toldRows(table).find(({ number }) => number === null)!;
    return [
      `“On ${missed.label} nobody measured. I keep its place at the bottom and make no point there.”`,
      '“From the point before to the point after I draw dashes, because between them I only guess. Where we measured day after day I draw a full line.”',
      'Ask: “Which part of my line do we know? Which part do we guess?”',
    ];
  },
  'jump-is-the-difference': ({ table }) => {
    const [, from, to] = toldRows(table);
    const jump = to!.number! - from!.number!;
    return [
      `“On ${from!.label} the tower was ${from!.text}, on ${to!.label} it was ${to!.text}. I stand on ${from!.text} on the number line and jump to ${to!.text}.”`,
      `“I write ${from!.text} + ? = ${to!.text}. My jump is ${jump} long, so the tower got ${jump} ${unitOf(table, jump)} taller.”`,
      `Turn it round: ${to!.text} − ${from!.text} = ${jump}. Ask: “Where do you see the ${jump} between the two bars?”`,
    ];
  },
  'smaller-unit-more-units': ({ table }) => {
    const isInInches = table.form !== 'counts' && table.unit === 'in';
    const row = toldRows(table).toSorted((one, other) => one.number! - other.number!)[1]!;
    const other = isInInches ? Math.round(row.number! * 2.54) : Math.round(row.number! / 2.54);
    const [cm, inches] = isInInches ? [`about ${other}`, row.text] : [row.text, `about ${other}`];
    return [
      `“The ${row.label} is ${isInInches ? inches : cm} ${isInInches ? 'inches' : 'centimetres'} on one side of my ruler, and ${isInInches ? cm : inches} ${isInInches ? 'centimetres' : 'inches'} on the other. It is one ribbon: nothing grew or shrank.”`,
      '“A centimetre is small, so it takes many. An inch is bigger, so it takes fewer.”',
      'Draw the bars in one unit only, and write the unit at the side. Ask: “What would happen if I put both kinds of numbers in one graph?”',
    ];
  },
  'guess-then-measure': ({ table }) => {
    const [known, next] = toldRows(table);
    const isLonger = next!.number! > known!.number!;
    const guess = next!.number! + (isLonger ? -1 : 1);
    return [
      `“I have measured the ${known!.label}: ${known!.text} ${unitOf(table, known!.number)}. The ${next!.label} looks ${isLonger ? 'longer' : 'shorter'}. I guess ${guess}, and draw a dotted line there.”`,
      `“Now I measure: ${next!.text}. My guess was 1 off. That is close, and I know more for the next one.”`,
      'Ask: “What could help you to guess the last one?”',
    ];
  },
  'whose-line': ({ table }) => {
    const names = table.form === 'times' ? table.seriesNames : [];
    return [
      `“One snowman stood in the sun, one in the shade. All else was the same. I write the key first: one kind of point for the ${names[0]}, another kind for the ${names[1]}.”`,
      '“I do the first one from left to right, then the other. On each day I can look from one to the other: that is the same day for both.”',
      'Ask: “On which day are they furthest apart? What was different between the two?”',
    ];
  },
};

const counted = (count: number): string =>
  Array.from({ length: count }, (_, index) => String(index + 1)).join(', ');

const multiples = (of: number, times: number): readonly string[] =>
  Array.from({ length: times }, (_, index) => String(of * (index + 1)));

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
