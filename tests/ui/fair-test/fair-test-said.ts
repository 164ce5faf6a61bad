import { civilDay } from '#core/calendar';
import {
  colourWords,
  differenceWords,
  fairTestWords,
  needWords,
  secondWords,
  standWords,
  talkWords,
  tallerWords,
} from '../../../src/lib/ui/fair-test/fair-test-words';

/** All that a child can read on the page of the fair test. */
export const fairTestSaid = [
  ...[fairTestWords, differenceWords, secondWords, colourWords, standWords, needWords, tallerWords],
  talkWords({ pots: 2, day: civilDay('2026-03-13'), severalDays: true }),
  talkWords({ pots: 3, day: null, severalDays: false }),
];
