import type { AskedQuestion, QuestionId, Told } from './question';

/**
 * The forms in which each template is asked: the blanks its wording has, what stands in each, and
 * what kind of thing the answer is. Where a template has several forms, the one with more blanks
 * comes first.
 */
export interface QuestionForm {
  readonly form: FormName;
  readonly blanks: Readonly<Record<string, Told['kind']>>;
  readonly answers: readonly Told['kind'][];
}

/**
 * Most templates have one form. C2 compares growth (with its gap), rain of two days, or shadow of
 * two times; C10 counts units or, where there are halves, steps; C13 asks how far one plant was
 * ahead on a day, or on which day it was furthest ahead; Y3 compares with a hand or with the pot.
 */
export type FormName =
  | 'only'
  | ('growth' | 'rain' | 'shadow')
  | ('steps' | 'units')
  | ('how-far' | 'which-day')
  | ('hand-span' | 'pot');

/**
 * The form a question is asked in; null where its blanks or its answer fit none.
 * @example
 * formOf({ template: 'R4', blanks: { counted: { kind: 'word', word: 'days' } }, answer: { kind: 'count', count: 2, of: 'days' } }) // => 'only'
 * formOf({ template: 'R4', blanks: {}, answer: { kind: 'count', count: 2, of: 'days' } }) // => null
 */
export const formOf = ({
  template,
  blanks,
  answer,
}: Pick<AskedQuestion, 'template' | 'blanks' | 'answer'>): FormName | null => {
  const fits = (form: QuestionForm): boolean =>
    form.answers.includes(answer.kind) &&
    Object.entries(form.blanks).every(([name, kind]) => blanks[name]?.kind === kind);
  return questionForms[template].find(fits)?.form ?? null;
};

type Names = Readonly<Record<string, Told['kind']>>;

const named = (
  form: FormName,
  blanks: Names,
  ...answers: readonly Told['kind'][]
): QuestionForm => ({
  ...{ form, blanks, answers },
});
const only = (blanks: Names, ...answers: readonly Told['kind'][]): readonly QuestionForm[] => [
  named('only', blanks, ...answers),
];
const words = (...names: readonly string[]): Names =>
  Object.fromEntries(names.map((name) => [name, 'word']));

const ofPlant = words('plant', 'measured');
const ofSpecimen = words('specimen');
const ofSpecimenDay = { ...ofSpecimen, day: 'day' } as const;
const ofLogDay = { ...words('specimen', 'measured'), day: 'day' } as const;
const twoDays = { more: 'day', less: 'day' } as const;

const questionForms: Readonly<Record<QuestionId, readonly QuestionForm[]>> = {
  R1: only({ ...ofPlant, day: 'day' }, 'length'),
  R2: only(words('kind', 'counted'), 'count'),
  R3: only({ ...ofPlant, value: 'length' }, 'day'),
  R4: only(words('counted'), 'count'),
  R5: only(words('measured'), 'idea'),
  R6: only({ ...words('measured'), value: 'length' }, 'count'),
  R7: only(words('counted'), 'count', 'length'),
  R8: only(ofPlant, 'days'),
  R9: only(words('plant'), 'idea'),
  R10: only({ ...words('unit'), time: 'time' }, 'length'),
  C1: only(words('more', 'fewer', 'counted'), 'count'),
  C2: [
    named('growth', { ...ofPlant, ...twoDays, gap: 'count' }, 'length'),
    named('rain', { ...ofPlant, ...twoDays }, 'length'),
    named('shadow', { ...words('measured'), more: 'time', less: 'time' }, 'length'),
  ],
  C3: only(words('one', 'other', 'counted'), 'count'),
  C4: only(words('counted'), 'count'),
  C5: only({ ...ofPlant, apart: 'length' }, 'days'),
  C6: only({ ...words('measured'), things: 'order' }, 'order'),
  C7: only(ofPlant, 'interval'),
  C8: only({ ...ofPlant, from: 'day', to: 'day', gap: 'count' }, 'length', 'between'),
  C9: only(words('measured'), 'length'),
  C10: [
    named('steps', { ...words('measured'), step: 'length' }, 'count'),
    named('units', words('measured'), 'length'),
  ],
  C11: only({ ...words('measured'), value: 'length' }, 'count'),
  C12: only(
    { ...words('one', 'other', 'third'), oneCount: 'count', otherCount: 'count', goal: 'count' },
    'count',
  ),
  C13: [
    named('how-far', { ...words('leader', 'other'), day: 'day' }, 'length'),
    named('which-day', words('leader', 'other'), 'day'),
  ],
  C14: only({ ...words('kind', 'counted'), each: 'count' }, 'count'),
  Y1: only(ofLogDay, 'between'),
  Y2: only(ofLogDay, 'between'),
  Y3: [
    named('hand-span', { ...ofLogDay, ...words('thing', 'whose'), length: 'length' }, 'idea'),
    named('pot', { ...ofLogDay, ...words('thing'), length: 'length' }, 'idea'),
  ],
  Y4: only({}, 'idea'),
  Y5: only({ ...ofSpecimen, more: 'length' }, 'idea'),
  Y6: only(ofSpecimen, 'idea'),
  Y7: only(ofSpecimen, 'between'),
  Y8: only({ kinds: 'order' }, 'word'),
  Y9: only({ day: 'day', time: 'time' }, 'idea'),
  Y10: only(ofSpecimen, 'between'),
  H1: only({}, 'idea'),
  H2: only(ofSpecimenDay, 'idea', 'order'),
  H3: only({ day: 'day', one: 'length', other: 'length' }, 'idea'),
  H4: only(
    {
      ...{ ...ofSpecimen, from: 'day', to: 'day' },
      ...{ inches: 'length', before: 'length', after: 'length' },
    },
    'idea',
  ),
  H5: only({}, 'order'),
  H6: only({ ...words('practice', 'stage'), seed: 'count' }, 'idea'),
  H7: only(ofSpecimen, 'idea'),
  H8: only({}, 'order'),
  H9: only({ offered: 'order' }, 'idea'),
  H10: only(ofSpecimenDay, 'idea'),
};
