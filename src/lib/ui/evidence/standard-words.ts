import { furtherStandards, type FurtherStandard, type SkillStandard } from '#core/lessons';
import { standardText } from '#ui/lesson-words';

/** What a code asks for, in short and in our own words. */
export const skillStandardText = (code: SkillStandard): string =>
  isFurther(code) ? further[code] : standardText(code);

const isFurther = (code: SkillStandard): code is FurtherStandard =>
  furtherStandards.some((each) => each === code);

const further: Readonly<Record<FurtherStandard, string>> = {
  '1.OA.A.1': 'Grade 1: add and subtract within 20 in stories.',
  '3.NBT.A.2': 'Grade 3: add and subtract within 1000.',
  'SEP 1': 'Science practice 1: ask questions that can be looked into.',
  'SEP 3': 'Science practice 3: plan and carry out an investigation; predict and observe.',
  'SEP 4': 'Science practice 4: make sense of data; compare what was predicted with what came.',
};

export const standardsFrom =
  'From the Common Core State Standards for Mathematics (2010) and the Next Generation Science Standards, in our own short words. Your state’s may differ.';
