import type { Parts } from '@/shared/pour/resin-sheet';
import { type WeighedOut, type WeighOutError, weighOut } from '@/shared/pour/weigh-out';
import { err, ok, type Result } from '@/shared/result/result';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';

export type BatchesAsk = {
  readonly total: Milligrams;
  readonly parts: Parts;
  /** What the bucket holds with room to stir, and what may be mixed at once within the pot life; the smaller counts. */
  readonly bucket: Milligrams;
  readonly mostMixed?: Milligrams | undefined;
  /** The scale's step. */
  readonly step: Milligrams;
};

export type BatchesError = WeighOutError | { readonly code: 'bucket-too-small'; readonly field: 'bucket' };

/**
 * Batches as even as the scale's step allows, the fewest that fit the bucket and the pot life. The steps that do not share
 * out evenly go one each to the first batches, so that all batches together are the whole, to the step. 2.5 kg in a
 * bucket of 1 kg is three batches: 833.4, 833.3 and 833.3 g on a scale of 0.1 g.
 */
export function splitBatches(ask: BatchesAsk): Result<readonly WeighedOut[], BatchesError> {
  const { total, parts, step } = ask;
  if (!(step > 0)) return err({ code: 'not-above-zero', field: 'step' });
  const most = Math.floor(Math.min(ask.bucket, ask.mostMixed ?? ask.bucket) / step);
  if (most < 2) return err({ code: 'bucket-too-small', field: 'bucket' });
  const steps = Math.ceil(total / step);
  const count = Math.max(1, Math.ceil(steps / most));
  const batches: WeighedOut[] = [];
  for (let nr = 0; nr < count; nr += 1) {
    const share = Math.floor(steps / count) + (nr < steps % count ? 1 : 0);
    const weighed = weighOut(milligrams(share * step), parts, step);
    if (!weighed.ok) return weighed;
    batches.push(weighed.value);
  }
  return ok(batches);
}
