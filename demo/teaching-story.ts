import { civilDay } from '#core/calendar';
import { begunDrawing, drawRight } from '#core/graphs';
import {
  foldEntries,
  type DrawingId,
  type EntryId,
  type EvidenceLevel,
  type JournalEntry,
  type LessonId,
  type Notebook,
  type PersonId,
} from '#core/journal';
import {
  lessonDrafts,
  purposesReady,
  reviewFor,
  reviewSheet,
  type LessonAbout,
  type PurposeId,
  type SkillId,
} from '#core/lessons';
import {
  lessonFactsOf,
  type AskedQuestion,
  type LessonFacts,
  type QuestionId,
} from '#core/questions';
import { answerText } from '#ui/ladder-words';
import type { Family } from './sample-family';
import { onDay, StoryWriter } from './story-writer';

/** A lesson as it was made in the story, and what it asked. */
interface ToldLesson {
  readonly id: LessonId;
  readonly about: LessonAbout;
  readonly facts: LessonFacts;
  readonly asked: readonly AskedQuestion[];
}

/** What Wren said where an answer is an idea: a child's words, invented. */
const ideas: Readonly<Partial<Record<QuestionId, string>>> = {
  ...{ R5: 'One day.', R9: 'The dry day has a 0. The other has nothing.' },
  ...{ Y1: 'A bit more than now. It grew each day.', Y2: 'In the middle of the two.' },
  ...{ Y3: 'Not yet, my hand is bigger.', Y4: 'More sun, I think. It gets warm.' },
  ...{ Y6: 'No. Each seed is its own.', Y7: 'The same, or one more.', Y8: 'Sun. But it can rain.' },
  ...{ H1: 'At the soil.', H2: 'We did not measure. We were out.', H5: 'Just the light.' },
  ...{ H6: 'One part is drawn too big.', H8: 'Our yard. Not all the yards.' },
  ...{ H9: 'The one about next year.', H10: 'So we know what we read first.' },
};

/** How it went, by the place of the question: the first ones alone, then with a little help. */
const hows: readonly EvidenceLevel[] = ['alone', 'alone', 'with-help', 'alone', 'with-help'];

/**
 * How the made-up family taught with its logs: three lessons for Wren, each with her graph and her
 * answers, a page of review now and then, two questions of her own, and what Moss noted of her and
 * of Pip. Questions and review items are those the notebook makes on that day of the story. Written
 * by a writer of its own, so that the stories before it stay as they are.
 */
export function teachingEntries(
  told: readonly JournalEntry[],
  { wren, pip, grownUp }: Family,
): readonly JournalEntry[] {
  const story = new StoryWriter(20260304);
  const { investigations, specimens } = foldEntries(told);
  const [beans, rain] = investigations.keys();
  const [window, , gauge] = specimens.keys();
  if (!beans || !rain || !window || !gauge) throw new Error('The beans and the rain come first');
  const bean: LessonAbout = { investigation: beans, specimen: window };
  const rainfall: LessonAbout = { investigation: rain, specimen: gauge };

  /** The notebook as it stood at the end of a day. */
  const notebookOn = (day: string): Notebook =>
    foldEntries([...told, ...story.entries].filter(({ at }) => at.slice(0, 10) <= day));

  function note(
    day: string,
    person: PersonId,
    skill: SkillId,
    how: EvidenceLevel,
    text: string,
    attached: { readonly drawing?: DrawingId; readonly answer?: EntryId } = {},
  ): void {
    story.write(day, '15:00', grownUp, {
      ...{ kind: 'evidence-noted', person, skill, how, day: onDay(day), note: text },
      ...attached,
    });
  }

  function makeLesson(day: string, about: LessonAbout, purpose: PurposeId): ToldLesson {
    const today = civilDay(day);
    const notebook = notebookOn(day);
    const offer = purposesReady(notebook, about, 'grade-2', today).find(
      (each) => each.purpose.id === purpose && each.missing.length === 0,
    );
    const facts =
      offer && lessonFactsOf(notebook, offer.choice, offer.purpose.graph, 'grade-2', today);
    if (!facts?.ok) throw new Error(`The story has no ${purpose} on ${day}`);
    const id = story.id<LessonId>(`${day}T13:00Z`);
    const wish = { purpose, minutes: 30, seed: 7 } as const;
    const drafts = lessonDrafts(id, about, facts.value, wish);
    drafts.forEach((draft) => story.write(day, '13:00', grownUp, draft));
    const asked = drafts.flatMap((draft) =>
      draft.kind === 'lesson-changed' ? (draft.to['questions'] as readonly AskedQuestion[]) : [],
    );
    return { id, about, facts: facts.value, asked };
  }

  /** Her graph: begun in its frame, and done. */
  function draw(day: string, { about, facts }: ToldLesson, title: string): DrawingId {
    const { right, graph, choice } = facts;
    const id = story.id<DrawingId>(`${day}T14:10Z`);
    story.write(day, '14:10', wren, {
      ...{ kind: 'drawing-begun', drawing: id, ...about, graph, choice: { ...choice } },
      ...{ stage: 'grade-2', level: 'frame-given' },
    });
    const begun = begunDrawing(drawRight(right), 'frame-given');
    for (const [time, paper] of [
      ['14:12', begun],
      ['14:21', { ...drawRight(right), title }],
    ] as const) {
      story.write(day, time, wren, {
        ...{ kind: 'drawing-saved', drawing: id, paper: { ...paper }, ticked: [] },
      });
    }
    story.write(day, '14:22', wren, { kind: 'drawing-finished', drawing: id });
    return id;
  }

  /** What she said to the questions of a lesson, all of them or the first, and with how much help. */
  function talk(day: string, { id, asked }: ToldLesson, most = asked.length): void {
    asked.slice(0, most).forEach((question, index) => {
      const { template, answer } = question;
      const isOpen = answer.kind === 'idea' || answer.kind === 'between';
      story.write(day, '14:30', wren, {
        ...{ kind: 'question-answered', lesson: id, question: { ...question }, day: onDay(day) },
        answer: ideas[template] ?? answerText(answer),
        how: isOpen ? 'seen' : (hows[index] ?? 'alone'),
      });
    });
    story.write(day, '14:45', grownUp, { kind: 'lesson-given', lesson: id, day: onDay(day) });
  }

  /** A page of review, all of it right but the place that was missed. */
  function review(day: string, missed: number | null): void {
    const options = { stage: 'grade-2', family: 'centimetres' } as const;
    const places = reviewFor(notebookOn(day), wren, civilDay(day), options);
    const items = places.flatMap((place) => ('task' in place ? [place] : []));
    items.forEach((item, index) =>
      story.write(day, '16:00', wren, {
        ...{ kind: 'review-answered', item: reviewSheet(item), day: onDay(day), answer: '' },
        outcome: index === missed ? 'again' : 'rest',
      }),
    );
  }

  note(
    '2026-03-12',
    wren,
    'measures-from-zero',
    'with-help',
    'Put the 0 at the soil once I asked.',
  );
  review('2026-03-16', 1);
  note('2026-03-17', wren, 'estimates-first', 'alone', 'Used her little finger to guess.');

  const bars = makeLesson('2026-03-19', bean, 'value-bars');
  const barGraph = draw('2026-03-19', bars, 'My bean');
  talk('2026-03-19', bars);
  const herself = 'Two bars began at 1. She saw it and put them right.';
  note('2026-03-19', wren, 'draws-bar-graph', 'with-help', herself, { drawing: barGraph });
  note('2026-03-20', wren, 'estimates-first', 'alone', '“Half of my hand is about 6.”');
  review('2026-03-23', null);
  note('2026-03-24', wren, 'estimates-first', 'alone', 'Said 19 and why. It was 19.');

  const pictures = makeLesson('2026-03-30', bean, 'picture-graph-of-kinds');
  const pictureGraph = draw('2026-03-30', pictures, 'Did it grow?');
  talk('2026-03-30', pictures);
  const keyFirst = 'Wrote the key before the first picture.';
  note('2026-03-30', wren, 'draws-picture-graph', 'alone', keyFirst, { drawing: pictureGraph });
  note('2026-03-30', pip, 'keeps-a-tally', 'with-help', 'Made the marks. I counted with him.');
  review('2026-04-13', 2);
  review('2026-04-14', null);

  const plot = makeLesson('2026-04-30', rainfall, 'line-plot-of-amounts');
  const linePlot = draw('2026-04-30', plot, 'Rain in our gauge');
  // They stopped while she was willing: the rest is there to be talked about.
  talk('2026-04-30', plot, 2);
  const even = 'All X marks the same size, after one look at the first pile.';
  note('2026-04-30', wren, 'draws-line-plot', 'with-help', even, { drawing: linePlot });
  for (const [level, text] of [
    ['read', 'What was the most rain in a day?'],
    ['between', 'How many more dry days than wet days?'],
  ] as const) {
    story.write('2026-04-30', '15:10', wren, {
      ...{ kind: 'question-written', lesson: plot.id, level, day: onDay('2026-04-30'), text },
    });
  }
  const sentence = '“Most days had no rain at all.”';
  note('2026-04-30', wren, 'says-what-a-graph-tells', 'alone', sentence);
  // Nobody said who was at the tablet.
  const [first] = plot.asked;
  if (first) {
    story.write('2026-04-30', '17:05', null, {
      ...{ kind: 'question-answered', lesson: plot.id, question: { ...first }, how: 'with-help' },
      ...{ day: onDay('2026-04-30'), answer: answerText(first.answer) },
    });
  }
  return story.entries;
}
