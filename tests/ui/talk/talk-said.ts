import { graphKinds } from '#core/graphs';
import { questionIds, type AskedQuestion } from '#core/questions';
import { helpBySlip } from '../../../src/lib/ui/talk/help-words';
import { ownRight, rightText } from '../../../src/lib/ui/talk/right-words';
import { ownBeginnings, ownHint, talkWords } from '../../../src/lib/ui/talk/talk-words';

const question = (template: AskedQuestion['template']) => ({ template }) as AskedQuestion;

/** Everything the Talk page says to a child, besides the questions themselves. */
export const talkSaid = [
  ...[talkWords, ownHint, ownBeginnings, ownRight],
  questionIds.map((template) =>
    graphKinds.map((graph) =>
      (['own', 'computer', 'table'] as const).map((shown) =>
        rightText(question(template), shown, { graph }),
      ),
    ),
  ),
  Object.values(helpBySlip).map((help) =>
    typeof help === 'function'
      ? questionIds.map((template) => help(question(template)))
      : (help ?? ''),
  ),
];
