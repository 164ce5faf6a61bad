import { foldEntries } from '#core/journal';
import { lessonFactsOf, type LessonFacts } from '#core/questions';
import { madeLog } from './brute-force/made-log';

/** Lessons of so many made-up journals of every kind, those of which a graph can be drawn. */
export const lessonsOfMany = (howMany: number): readonly LessonFacts[] =>
  Array.from({ length: howMany }, (_, index) => madeLog(index + 1)).flatMap(
    ({ entries, asks, stage, today }) => {
      const notebook = foldEntries(entries);
      return asks.flatMap(({ choice, graph }) => {
        const facts = lessonFactsOf(notebook, choice, graph, stage, today);
        return facts.ok ? [facts.value] : [];
      });
    },
  );
