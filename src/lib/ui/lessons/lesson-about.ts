import { tableChoicesOf, type StandardCode } from '#core/graphs';
import type { Notebook } from '#core/journal';
import type { Lesson } from '#core/lessons';

/** What stands at the head of a lesson: whose log it is, and which standards it serves. */
export interface LessonAbout {
  readonly name: string;
  readonly isMadeUp: boolean;
  readonly standards: readonly StandardCode[];
}

export const lessonAbout = (
  { investigations, specimens }: Notebook,
  { record, facts, purpose }: Lesson,
): LessonAbout => {
  const log = investigations.get(record.investigation);
  const [specimen, another] = facts.choice.specimens;
  const only = another === undefined && specimen ? specimens.get(specimen) : undefined;
  return {
    name: only?.name ?? log?.title ?? '',
    isMadeUp: log?.origin === 'made-up',
    standards: [...new Set([...drawingServes(facts), ...purpose.alsoServes])],
  };
};

/** The standards of drawing just this table, or the nearest one to it that the log offers. */
const drawingServes = ({
  notebook,
  choice,
  stage,
  today,
  graph,
}: Lesson['facts']): readonly StandardCode[] => {
  const [specimen] = choice.specimens;
  const about = { investigation: choice.investigation, ...(specimen ? { specimen } : {}) };
  const variants = tableChoicesOf(notebook, about, stage, today)
    .filter(({ source }) => source === choice.source)
    .flatMap((offer) => offer.variants);
  const same = variants.find((each) => each.choice.told?.mark === choice.told?.mark) ?? variants[0];
  return same?.graphs.find((each) => each.graph === graph)?.standards ?? [];
};
