import { sealsOf } from '#core/growth';
import type { Notebook, SpecimenId } from '#core/journal';
import type { EvidenceOf, FoundEvidence } from './evidence';
import type { Finding } from './evidence-in-answers';
import { dayOfStamp } from './evidence-in-drawings';
import { skills, type DeedId, type SkillId } from './skill';

/**
 * What the log itself shows: readings, estimates, both sides of the ruler, guesses under seal, and
 * plans of a fair test. Whether somebody helped is not kept, so it is only "seen". Logs of
 * investigations that were removed are left out. Not part of the public door.
 */
export const evidenceInDeeds = (notebook: Notebook, timeZone: string): readonly Finding[] => [
  ...[...notebook.specimens.values()]
    .filter(({ investigation }) => notebook.investigations.has(investigation))
    .flatMap(({ id }) => inLog(notebook, id)),
  ...inPlans(notebook, timeZone),
];

const inLog = (notebook: Notebook, specimen: SpecimenId): readonly Finding[] => {
  const readings = standing(notebook.logBySpecimen.get(specimen)?.readings);
  return [
    ...readings.flatMap(({ id, author, day, at, counted: measured }) => {
      const other = notebook.otherSides.get(id);
      const of = { entry: id, specimen, measured };
      return [
        deed({ id, author, day, at }, { kind: 'reading', ...of }),
        ...(other
          ? [
              deed(
                { id: other.id, author: other.author, day, at: other.at },
                { kind: 'both-sides', ...of, other: other.measured },
              ),
            ]
          : []),
      ];
    }),
    ...standing(notebook.estimates.get(specimen)).map(({ measured, ...line }) =>
      deed(line, { kind: 'estimate', entry: line.id, specimen, measured }),
    ),
    ...sealsOf(notebook, specimen).map((line) =>
      deed(line, { kind: 'prediction', entry: line.id, specimen }),
    ),
  ];
};

const inPlans = ({ fairTests, investigations }: Notebook, timeZone: string): readonly Finding[] =>
  [...fairTests]
    .filter(([investigation]) => investigations.has(investigation))
    .flatMap(([investigation, plans]) =>
      plans.map(({ id, at, author }): Finding => {
        const day = dayOfStamp(at, timeZone);
        return day
          ? deed({ id, at, author, day }, { kind: 'fair-test-plan', entry: id, investigation })
          : { unread: { id, why: 'not-a-day' }, author };
      }),
    );

const standing = <Each extends { readonly takenBack: object | null }>(
  lines: readonly Each[] = [],
): readonly Each[] => lines.filter(({ takenBack }) => takenBack === null);

const deed = (
  { id, author, day, at }: Pick<FoundEvidence, 'id' | 'author' | 'day' | 'at'>,
  of: EvidenceOf & { readonly kind: DeedId },
): Finding => ({ found: { id, author, day, at, how: 'seen', of, skills: skillsByDeed[of.kind] } });

const skillsOfDeed = (wanted: DeedId): readonly SkillId[] =>
  skills.filter(({ deeds }) => deeds.includes(wanted)).map(({ id }) => id);

const skillsByDeed: Readonly<Record<DeedId, readonly SkillId[]>> = {
  reading: skillsOfDeed('reading'),
  estimate: skillsOfDeed('estimate'),
  'both-sides': skillsOfDeed('both-sides'),
  prediction: skillsOfDeed('prediction'),
  tally: skillsOfDeed('tally'),
  'fair-test-plan': skillsOfDeed('fair-test-plan'),
  'own-question': skillsOfDeed('own-question'),
};
