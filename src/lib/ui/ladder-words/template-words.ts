import type { AskedQuestion, QuestionId, Told } from '#core/questions';
import { answerText } from './told-text';

/** A blank as text; our own mistake throws when a wording names a blank that is not there. */
export type Blank = (name: string) => string;

/** The wordings of one template: as it is asked, easier, and further. All are for the child. */
export interface TemplateWords {
  ask(blank: Blank, question: AskedQuestion): string;
  easier(blank: Blank, question: AskedQuestion): string;
  stretch(blank: Blank, question: AskedQuestion): string;
}

export type WordsById = Readonly<Partial<Record<QuestionId, TemplateWords>>>;

export const blankOf =
  ({ blanks, template }: AskedQuestion): Blank =>
  (name) =>
    answerText(toldIn(blanks, name, template));

const toldIn = (blanks: AskedQuestion['blanks'], name: string, template: QuestionId): Told => {
  const told = blanks[name];
  if (!told) throw new Error(`${template} has no blank called ${name}`);
  return told;
};
