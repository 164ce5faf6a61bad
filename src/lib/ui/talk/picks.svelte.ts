import { sameTold, type Told } from '#core/questions';

/** A thing that can be picked for an answer. */
export interface Pickable {
  readonly told: Told;
  readonly name: string;
}

/** Which places are picked for an answer, and at which one the keys are. */
export class Picks {
  /** Where the keys are; -1 before any was looked at. */
  here = $state(-1);
  picked = $state.raw<readonly Told[]>([]);

  constructor(
    readonly places: readonly Pickable[],
    /** With one, the place looked at is the one picked. */
    readonly most: number,
  ) {}

  isPicked(place: Pickable): boolean {
    return this.picked.some((told) => sameTold(told, place.told));
  }

  /** A tap: looks at the place and picks it, or puts it back where several can be picked. */
  tap(index: number): void {
    this.here = index;
    const place = this.places[index];
    if (!place) return;
    if (this.most === 1) this.picked = [place.told];
    else if (this.isPicked(place)) {
      this.picked = this.picked.filter((told) => !sameTold(told, place.told));
    } else this.picked = [...this.picked, place.told].slice(-this.most);
  }

  /** The keys go on; a single answer goes along with them. */
  look(index: number): void {
    const last = this.places.length - 1;
    const at = Math.max(0, Math.min(last, index));
    if (this.most === 1) this.tap(at);
    else this.here = at;
  }
}
