import { err, ok, type Result } from '@/shared/result/result';
import { type Microlitres, microlitres } from '@/shared/units/stock-unit';

/** What a pour is reckoned from. Shares are whole per cent, volumes microlitres. */
export type PourNeedAsk = {
  /** What the form holds, or the river and the fills as drawn. */
  readonly form: Microlitres;
  /** Wood and other things that stand in it. */
  readonly displaced: Microlitres;
  /** Bare wood to be sealed first, square millimetres, and how much a square metre drinks. */
  readonly sealArea: number;
  readonly sealPerSquareMetre: Microlitres;
  /** Lost under the form and into checks, of the void. */
  readonly leakagePercent: number;
  /** Stays in each cup or bucket. */
  readonly lossPerBatch: Microlitres;
  readonly batches: number;
};

export type PourNeed = {
  readonly void: Microlitres;
  readonly seal: Microlitres;
  readonly leakage: Microlitres;
  readonly cups: Microlitres;
  readonly total: Microlitres;
};

export type PourNeedError = {
  readonly code: 'wood-fills-the-form' | 'outside-range';
  readonly field: keyof PourNeedAsk;
};

/**
 * How much mixed resin a pour takes, line by line: the void (form less what stands in it), the seal coat, leakage and what
 * stays in the cups. Each line is rounded up to the microlitre, so the total is never short. Refused when the wood fills
 * the form, when a number is below zero or broken, or leakage above 100 %. A form of 5 L with 1 L of wood, 5 % leakage, two
 * buckets that keep 20 mL each and no seal coat takes 4 + 0.2 + 0.04 = 4.24 L. Allowances are common practice: the maker's
 * own figures go before them.
 */
export function pourNeed(ask: PourNeedAsk): Result<PourNeed, PourNeedError> {
  for (const field of [
    'form',
    'displaced',
    'sealArea',
    'sealPerSquareMetre',
    'leakagePercent',
    'lossPerBatch',
  ] as const) {
    if (!Number.isFinite(ask[field]) || ask[field] < 0) return err({ code: 'outside-range', field });
  }
  if (ask.leakagePercent > 100) return err({ code: 'outside-range', field: 'leakagePercent' });
  if (!Number.isInteger(ask.batches) || ask.batches < 1) return err({ code: 'outside-range', field: 'batches' });
  if (ask.displaced >= ask.form) return err({ code: 'wood-fills-the-form', field: 'displaced' });
  const space = ask.form - ask.displaced;
  const seal = Math.ceil((ask.sealArea * ask.sealPerSquareMetre) / 1e6);
  const leakage = Math.ceil((space * ask.leakagePercent) / 100);
  const cups = ask.lossPerBatch * ask.batches;
  return ok({
    void: microlitres(space),
    seal: microlitres(seal),
    leakage: microlitres(leakage),
    cups: microlitres(cups),
    total: microlitres(space + seal + leakage + cups),
  });
}
