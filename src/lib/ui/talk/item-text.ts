import { questionText } from '#ui/ladder-words';
import type { TalkItem } from './talk-item';

/** A question as a child reads it. */
export const itemText = (item: TalkItem): string =>
  item.kind === 'own' ? item.text : questionText(item.question);
