import { heightAt, type Profile, pulledTo } from '@/shared/fit/outer-profile';
import type { SearchedShape } from '@/shared/fit/searched-shape';

const FLAT: Profile = {
  s: new Float64Array(1),
  u: new Float64Array(1),
  slope: new Float64Array(0),
  begin: new Int32Array(1),
  half: 0,
};
const NOTHING: SearchedShape = { up: FLAT, down: FLAT, reach: 0, tall: 0, round: true };

/**
 * The part of a shape that stays covered however it is turned by up to `spread` radians either way: on each side
 * up(|t| + tall·tan) − |t|·tan. A point of it at (t, y) moves across by at most |t|·tan and along by at most tall·tan,
 * and profiles fall away from the middle, so it stays in the shape. With a spread of 0 it is the shape.
 */
export class CoveredShape {
  private shape: SearchedShape = NOTHING;
  private tan = 0;
  private shift = 0;
  /** Half its length; nothing stays covered when it is not above 0. */
  half = 0;
  /** How far the middle of its height lies above where it is held. */
  centre = 0;

  use(shape: SearchedShape): void {
    this.shape = shape;
  }

  spread(spread: number): void {
    this.tan = Math.tan(spread);
    this.shift = this.shape.tall * this.tan;
    this.half = this.coveredHalf();
    this.centre = (this.above(0) - this.below(0)) / 2;
  }

  /** How far it reaches up, `distance` from its middle. */
  above(distance: number): number {
    return this.height(this.shape.up, distance);
  }

  /** How far it reaches down, `distance` from its middle. */
  below(distance: number): number {
    return this.height(this.shape.down, distance);
  }

  /** Where along it `pull × t + above(|t|)` is greatest. */
  pulledAbove(pull: number): number {
    return this.pulled(this.shape.up, pull);
  }

  /** Where along it `pull × t + below(|t|)` is greatest. */
  pulledBelow(pull: number): number {
    return this.pulled(this.shape.down, pull);
  }

  private height(profile: Profile, distance: number): number {
    return heightAt(profile, Math.min(profile.half, distance + this.shift)) - distance * this.tan;
  }

  private pulled(profile: Profile, pull: number): number {
    const net = Math.abs(pull) - this.tan;
    if (net <= 0) return 0;
    const at = Math.max(0, pulledTo(profile, net) - this.shift);
    return pull > 0 ? at : -at;
  }

  private coveredHalf(): number {
    const most = Math.min(this.shape.up.half, this.shape.down.half) - this.shift;
    if (this.tan === 0) return most;
    const covered = (distance: number) => this.above(distance) + this.below(distance) >= 0;
    if (!(most > 0) || !covered(0)) return 0;
    if (covered(most)) return most;
    let [low, high] = [0, most];
    for (let step = 0; step < 30; step += 1) {
      const middle = (low + high) / 2;
      if (covered(middle)) low = middle;
      else high = middle;
    }
    return low;
  }
}
