import { mostMixed } from '@/shared/pour/most-mixed';
import type { Parts, PotLife } from '@/shared/pour/resin-sheet';
import { type BatchesError, splitBatches } from '@/shared/pour/split-batches';
import type { WeighedOut } from '@/shared/pour/weigh-out';
import { err, type Result } from '@/shared/result/result';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type LiftBatchesAsk = {
  /** What goes into the form, and what stays in each bucket. */
  readonly mass: Milligrams;
  readonly loss: Milligrams;
  readonly parts: Parts;
  readonly potLives?: readonly PotLife[] | undefined;
  readonly room: TenthsCelsius;
  readonly bucket: Milligrams;
  readonly minutesPerKilogram: number;
  /** The scale's step. */
  readonly step: Milligrams;
};

/**
 * Batches of a lift, the fewest that fit the bucket and the pot life (`mostMixed`), each with what stays in its own bucket.
 * Fails as `splitBatches` does, and with `bucket-too-small` where a bucket takes no more than what stays in it. 1600 g in
 * buckets of 1 kg that keep 20 g each are two batches of 820 g.
 */
export function liftBatches(ask: LiftBatchesAsk): Result<readonly WeighedOut[], BatchesError> {
  const { mass, loss, parts, bucket, step } = ask;
  const inTime = mostMixed(ask.potLives, ask);
  const most = Math.floor(inTime / step) * step;
  if (!(most > loss)) return err({ code: 'bucket-too-small', field: 'bucket' });
  let count = Math.ceil(mass / (most - loss));
  for (;;) {
    const total = milligrams(mass + count * loss);
    const batches = splitBatches({ total, parts, bucket, mostMixed: inTime, step });
    if (!batches.ok || batches.value.length <= count) return batches;
    count = batches.value.length;
  }
}
