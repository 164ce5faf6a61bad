import { isTallerHealthier } from './is-taller-healthier';
import type { QuestionTemplate } from './question';
import { wasTestFair } from './was-test-fair';
import { whatCouldTrickReader } from './what-could-trick-reader';
import { whereDidRulerBegin } from './where-did-ruler-begin';
import { whichCannotBeAnswered } from './which-cannot-be-answered';
import { whichOfTwoIsRight } from './which-of-two-is-right';
import { whichUnitShowsMore } from './which-unit-shows-more';
import { whoseWeatherIsThis } from './whose-weather-is-this';
import { whyKeepCrossedOut } from './why-keep-crossed-out';
import { whyNoMarkOnDay } from './why-no-mark-on-day';

/** The templates of this level, in order of their ids. Not part of the public door. */
export const behindTemplates: readonly QuestionTemplate[] = [
  ...[whereDidRulerBegin, whyNoMarkOnDay, whichOfTwoIsRight, whichUnitShowsMore, wasTestFair],
  ...[whatCouldTrickReader, isTallerHealthier, whoseWeatherIsThis, whichCannotBeAnswered],
  ...[whyKeepCrossedOut],
];
