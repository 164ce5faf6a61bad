import { askIdea, fromGrade1, graphsOverTime, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { anIdea } from './told';

/** "Where did the ruler begin?" Of a plant whose protocol says: at the soil. */
export const whereDidRulerBegin: QuestionTemplate = {
  ...{ id: 'H1', level: 'behind', graphs: graphsOverTime, ranges: fromGrade1 },
  ask: (facts) => {
    const investigation = facts.series[0]?.investigation;
    if (investigation?.quantity !== 'plant-height' || facts.table.form === 'counts') return [];
    if (!/\bsoil\b/i.test(investigation.where)) return [];
    const slips = [ideaSlip('bottom-of-pot')];
    return askIdea(whereDidRulerBegin, facts, { answer: anIdea('soil-line'), slips });
  },
};
