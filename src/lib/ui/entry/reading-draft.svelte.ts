import type { CivilDay, ClockTime } from '#core/calendar';
import { parseClockTime } from '#core/calendar';
import type { EntryDraft, Investigation, Stage, WeatherWord } from '#core/journal';
import { middleReading, type Specimen } from '#core/journal';
import { unitAndMark } from '#core/lessons';
import {
  formatExactNumber,
  markById,
  parseMeasured,
  type MarkId,
  type Measured,
  type ParseError,
  type Unit,
} from '#core/measure';
import { wholeNumberIn } from './whole-number';

/** A reading while it is being written: what stands on the pad, and what goes with it. */
export class ReadingDraft {
  text = $state('');
  unit = $state<Unit>('cm');
  day = $state() as CivilDay;
  time = $state('');
  /** Readings of this same moment that are already down; the middle one of all counts. */
  reads = $state.raw<readonly Measured[]>([]);
  leaves = $state('');
  weather = $state<WeatherWord | null>(null);
  note = $state('');
  /** How many days of rain are in it, as typed; empty for one. */
  span = $state('');
  /** Whether somebody has pressed the button: a half-written number is not doubted before. */
  tried = $state(false);

  readonly mark: MarkId = $derived.by(() => this.#markFor(this.unit));
  readonly parsed = $derived.by(() =>
    parseMeasured(this.text, { unit: this.unit, mark: this.mark }),
  );
  readonly error: ParseError | null = $derived(
    this.tried && !this.parsed.ok ? this.parsed.error : null,
  );

  constructor(
    readonly specimen: Specimen,
    readonly investigation: Investigation,
    readonly stage: Stage,
    day: CivilDay,
  ) {
    this.unit = investigation.unit;
    this.day = day;
  }

  /** The units of the switch: the investigation's own, and its neighbour in the other family. */
  get units(): readonly Unit[] {
    const { quantity, unit } = this.investigation;
    const pair = (['inches', 'centimetres'] as const).map(
      (family) => unitAndMark(quantity, this.stage, family).unit,
    );
    return [unit, ...pair].filter((each, index, all) => all.indexOf(each) === index);
  }

  /** Writes the number that was tapped on the ruler. */
  pick(exact: number): void {
    this.text = formatExactNumber(exact, this.unit, this.mark);
    this.tried = false;
  }

  /** Puts the number down as one of several readings of this moment. */
  readAgain(): boolean {
    this.tried = true;
    if (!this.parsed.ok) return false;
    this.reads = [...this.reads, this.parsed.value];
    this.text = '';
    this.tried = false;
    return true;
  }

  dropRead(index: number): void {
    this.reads = this.reads.filter((_, at) => at !== index);
  }

  /** All readings of the moment, the one on the pad last; null while it cannot be read. */
  get all(): readonly [Measured, ...Measured[]] | null {
    const onPad = this.parsed.ok ? [this.parsed.value] : [];
    if (onPad.length === 0 && this.text.trim() !== '') return null;
    const [first, ...rest] = [...this.reads, ...onPad];
    return first ? [first, ...rest] : null;
  }

  get counted(): Measured | null {
    return this.all && middleReading(this.all);
  }

  get clockTime(): ClockTime | null {
    const parsed = parseClockTime(this.time);
    return parsed.ok ? parsed.value : null;
  }

  /** Null where no leaves were counted. */
  get leafCount(): number | null | 'odd' {
    return wholeNumberIn(this.leaves, 0, 999);
  }

  get spanDays(): number | 'odd' {
    return wholeNumberIn(this.span, 1, 60) ?? 1;
  }

  /** The entry to write, or null while there is a number that cannot be read. */
  toEntry(): Extract<EntryDraft, { kind: 'reading-taken' }> | null {
    this.tried = true;
    const { all, clockTime, weather, leafCount, spanDays } = this;
    if (!all || leafCount === 'odd' || spanDays === 'odd') return null;
    const [measured, ...again] = all;
    const note = this.note.trim();
    return {
      kind: 'reading-taken',
      specimen: this.specimen.id,
      day: this.day,
      measured,
      ...(clockTime === null ? {} : { time: clockTime }),
      ...(again.length === 0 ? {} : { again }),
      ...(spanDays > 1 ? { spanDays } : {}),
      ...(leafCount === null ? {} : { leaves: leafCount }),
      ...(weather === null ? {} : { weather }),
      ...(note === '' ? {} : { note: note.slice(0, 4000) }),
    };
  }

  #markFor(unit: Unit): MarkId {
    const { quantity, unit: own, mark } = this.investigation;
    if (unit === own && markById(mark).unit === unit) return mark;
    const family = unit === 'in' || unit === 'ft' || unit === 'yd' ? 'inches' : 'centimetres';
    return unitAndMark(quantity, this.stage, family).mark;
  }
}
