import { seededRandom } from '#core/base';
import {
  betweenMarksTask,
  judgeRulerTask,
  offZeroTask,
  type RulerJudgement,
  type RulerTask,
  type UnitFamily,
} from '#core/lessons';
import type { LessonSettings } from './lesson-settings';
import { otherNumberWords, slipWords } from './slip-words';

/** One ruler task after another, and what was said to the one in hand. Nothing of it is kept. */
export class LessonDesk {
  #seed = $state(0);
  family: UnitFamily = $state('inches');
  text = $state('');
  judgement = $state.raw<RulerJudgement | null>(null);
  readonly #settings: LessonSettings;
  readonly #kind: RulerTask['kind'];

  constructor(kind: RulerTask['kind'], settings: LessonSettings, firstSeed: number) {
    this.#kind = kind;
    this.#settings = settings;
    this.#seed = firstSeed;
    this.family = settings.family;
  }

  get seed(): number {
    return this.#seed;
  }

  readonly task: RulerTask = $derived.by(() => {
    const make = this.#kind === 'off-zero' ? offZeroTask : betweenMarksTask;
    return make(this.#settings.stage, this.family, seededRandom(this.#seed));
  });

  readonly isRight = $derived(this.judgement?.kind === 'right');

  /** What is right about the answer, and the questions that help; null where none is needed. */
  readonly help = $derived.by(() => {
    if (this.judgement?.kind === 'slip') return slipWords[this.judgement.slip];
    return this.judgement?.kind === 'other' ? { right: null, hints: otherNumberWords } : null;
  });

  write(text: string): void {
    this.text = text;
    this.judgement = null;
  }

  say(answer: string | number): void {
    this.judgement = judgeRulerTask(this.task, answer);
  }

  lookAgain(): void {
    this.judgement = null;
  }

  another(): void {
    this.#seed += 1;
    this.#clear();
  }

  useFamily(family: UnitFamily): void {
    this.family = family;
    this.#clear();
  }

  #clear(): void {
    this.write('');
  }
}
