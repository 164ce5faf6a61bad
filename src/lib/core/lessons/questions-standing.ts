import { everyTemplate, isTelling, type AskedQuestion, type LessonFacts } from '#core/questions';
import type { LessonPlan } from './lesson-plan';

/**
 * The questions of a lesson that the log still answers, those that it does not, and spare ones. A
 * kept question is asked again of the facts: it stands when its template asks the same with the
 * same answer. Slips are those of the facts now. Not part of the public door.
 *
 * @param kept what was kept when the lesson was made; null for those of the plan
 */
export const questionsStanding = (
  facts: LessonFacts,
  plan: Pick<LessonPlan, 'questions' | 'spare'>,
  kept: readonly AskedQuestion[] | null,
): Standing => {
  const planned = listOf(plan.questions);
  const again = kept?.map((question) => askedAgain(facts, question)) ?? planned;
  const standing = again.flatMap((question) => question ?? []);
  const withdrawn = kept?.filter((_, index) => !again[index]) ?? [];
  return { standing, withdrawn, spare: spareBeside(standing, [...planned, ...plan.spare]) };
};

/** Whether two are one question: the same blanks, and the same answer. Not in the door. */
export const isSameQuestion = (one: AskedQuestion, other: AskedQuestion): boolean =>
  one.template === other.template &&
  written(one.blanks) === written(other.blanks) &&
  written(one.answer) === written(other.answer);

/** Whether a question can stand beside others: of another template, and none tells another. */
export const standsBeside = (question: AskedQuestion, others: readonly AskedQuestion[]): boolean =>
  others.every(
    (other) =>
      other.template !== question.template &&
      !isTelling(question, other) &&
      !isTelling(other, question),
  );

interface Standing {
  readonly standing: readonly AskedQuestion[];
  readonly withdrawn: readonly AskedQuestion[];
  readonly spare: readonly AskedQuestion[];
}

const listOf = ({ read, between, beyond, behind }: LessonPlan['questions']) => [
  ...read,
  ...between,
  ...beyond,
  ...behind,
];

const askedAgain = (facts: LessonFacts, question: AskedQuestion): AskedQuestion | undefined =>
  everyTemplate
    .find(({ id, graphs }) => id === question.template && graphs.includes(facts.graph))
    ?.ask(facts)
    .find((each) => isSameQuestion(each, question));

const spareBeside = (
  standing: readonly AskedQuestion[],
  possible: readonly AskedQuestion[],
): readonly AskedQuestion[] =>
  possible.reduce<readonly AskedQuestion[]>(
    (spare, each) => (standsBeside(each, [...standing, ...spare]) ? [...spare, each] : spare),
    [],
  );

/** As text, whatever the order the fields were written in. */
const written = (data: unknown): string =>
  JSON.stringify(data, (_, value: unknown) =>
    value !== null && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(
          Object.entries(value).toSorted(([one], [other]) => (one < other ? -1 : 1)),
        )
      : value,
  );
