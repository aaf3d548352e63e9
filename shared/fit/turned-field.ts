import { type Blocked, BlockedPlaces } from '@/shared/fit/blocked-places';
import { CoveredShape } from '@/shared/fit/covered-shape';
import type { Obstacles } from '@/shared/fit/obstacles';
import type { SearchedShape } from '@/shared/fit/searched-shape';
import { TurnedSides } from '@/shared/fit/turned-sides';

/** An unbroken stretch of places, across the shape's own length, at which it can lie. */
export type FreeRun = { readonly from: number; readonly to: number };

/** A place in the turned field: where the shape is held. */
export type TurnedPlace = { readonly x: number; readonly y: number };

/** Taken off both ends, where the shape would stand against an upright end and count as meeting it, in micrometres. */
const TOUCH = 0.1;
const MOST_PARTS = 64;

/**
 * The obstacles seen with the shape's length lying along x, and the places it can lie in them. With a spread, the shape is
 * the part of it that stays covered at every angle so far to either side (`CoveredShape`): where even that cannot lie,
 * the shape cannot at any of those angles. Stretches of places are ruled out whole (`BlockedPlaces`), never sampled.
 */
export class TurnedField {
  private readonly sides: TurnedSides;
  private readonly shape = new CoveredShape();
  private readonly blocked: BlockedPlaces;
  private readonly pool: Blocked[] = [];
  private readonly common: Blocked;
  /** The least and greatest place along at which the shape is between the ends of the wood. */
  left = 0;
  right = 0;

  constructor(obstacles: Obstacles) {
    this.sides = new TurnedSides(obstacles);
    this.blocked = new BlockedPlaces(this.sides, this.shape);
    this.common = this.blocked.made();
  }

  /** Puts a shape among the obstacles; turn the field before asking. */
  use(shape: SearchedShape): void {
    this.shape.use(shape);
  }

  /** Turns the field. False when nothing of the shape stays covered over so wide a spread. */
  turn(angle: number, spread: number): boolean {
    this.shape.spread(spread);
    if (!(this.shape.half > 0)) return false;
    this.sides.turn(angle);
    this.blocked.turned();
    this.left = this.sides.left + this.shape.half + TOUCH;
    this.right = this.sides.right - this.shape.half - TOUCH;
    return true;
  }

  /** The place on the slab of a place in the turned field. */
  onSlab(x: number, y: number): TurnedPlace {
    return this.sides.onSlab(x, y);
  }

  /** The place in the turned field of a place on the slab. */
  fromSlab(x: number, y: number): TurnedPlace {
    return this.sides.fromSlab(x, y);
  }

  /** Where across the shape can lie when held at x along. */
  freeAt(x: number): readonly FreeRun[] {
    const blocked = this.buffer(0);
    this.blocked.at(x, blocked);
    return this.freeOf(blocked, x);
  }

  /**
   * Looks along x for a place, halving stretches down to `finest`. With `find` it answers the first place at which the
   * shape can lie, or undefined. Without, it answers undefined only when it has proved that there is none at any x, and
   * otherwise some place, which need not be one.
   */
  look(finest: number, find: boolean): TurnedPlace | undefined {
    const [left, right] = [this.left, this.right];
    if (!(right >= left)) return undefined;
    const parts = Math.max(1, Math.min(MOST_PARTS, Math.ceil((right - left) / Math.max(this.shape.half / 2, finest))));
    const at = (nr: number) => left + ((right - left) * nr) / parts;
    for (let nr = 0; nr <= parts; nr += 1) this.blocked.at(at(nr), this.buffer(nr));
    // The middle first: where a slab has one place, it has most of them there.
    for (let turn = 0; turn <= parts; turn += 1) {
      const nr = middleOut(turn, parts);
      const run = this.freeOf(this.buffer(nr), at(nr))[0];
      if (run) return { x: at(nr), y: (run.from + run.to) / 2 };
    }
    for (let turn = 0; turn < parts; turn += 1) {
      const nr = middleOut(turn, parts - 1);
      const found = this.halve(at(nr), at(nr + 1), this.buffer(nr), this.buffer(nr + 1), finest, find, parts + 1);
      if (found) return found;
    }
    return undefined;
  }

  private halve(
    x0: number,
    x1: number,
    at0: Blocked,
    at1: Blocked,
    finest: number,
    find: boolean,
    depth: number,
  ): TurnedPlace | undefined {
    const open = this.openBetween(x0, x1, at0, at1);
    if (open === undefined) return undefined;
    if (x1 - x0 <= finest) return find ? undefined : { x: (x0 + x1) / 2, y: open };
    const x = (x0 + x1) / 2;
    const at = this.buffer(depth);
    this.blocked.at(x, at);
    const run = this.freeOf(at, x)[0];
    if (run) return { x, y: (run.from + run.to) / 2 };
    return this.halve(x0, x, at0, at, finest, find, depth + 1) ?? this.halve(x, x1, at, at1, finest, find, depth + 1);
  }

  private buffer(nr: number): Blocked {
    while (this.pool.length <= nr) this.pool.push(this.blocked.made());
    return this.pool[nr] as Blocked;
  }

  private freeOf(blocked: Blocked, x: number): readonly FreeRun[] {
    const runs: FreeRun[] = [];
    let reached = -Infinity;
    for (const nr of this.blocked.inOrder(blocked)) {
      const from = blocked.low[nr] as number;
      if (from === Infinity) break;
      if (from > reached && reached > -Infinity && this.sides.isIn(x, (from + reached) / 2 + this.shape.centre)) {
        runs.push({ from: reached, to: from });
      }
      reached = Math.max(reached, blocked.high[nr] as number);
    }
    return runs;
  }

  /** A place across that is not proved blocked, or outside, for every x of a stretch; undefined when all are. */
  private openBetween(x0: number, x1: number, at0: Blocked, at1: Blocked): number | undefined {
    const { sides, common } = this;
    const { centre } = this.shape;
    this.blocked.along(at0, at1, common);
    let reached = -Infinity;
    for (const nr of this.blocked.inOrder(common)) {
      const from = common.low[nr] as number;
      if (from === Infinity) break;
      // Below all the wood there is none, which settles the first stretch without looking closer.
      const isBelow = reached === -Infinity && from + centre < sides.bottom;
      if (from > reached && !isBelow && !sides.isOutside(x0, x1, reached + centre, from + centre)) {
        return (Math.max(reached, from - 1e9) + from) / 2;
      }
      reached = Math.max(reached, common.high[nr] as number);
    }
    const isAbove = reached + centre > sides.top;
    return isAbove || sides.isOutside(x0, x1, reached + centre, Infinity) ? undefined : Math.max(reached, -1e9);
  }
}

/** Counting 0 … last from the middle outwards, by turns to either side. */
function middleOut(turn: number, last: number): number {
  const middle = last >> 1;
  const away = (turn + 1) >> 1;
  return turn % 2 === 1 ? Math.min(last, middle + away) : middle - away;
}
