import { type Explained, explained } from '@/shared/wood/explained';

type Grip = 'good' | 'fair' | 'poor';

/** One lift, in centimetres and degrees: hands from the ankles, hands above the floor, travel up or down, turn of the body. */
export type Lift = {
  readonly reach: number;
  readonly height: number;
  readonly travel: number;
  readonly turn: number;
  readonly grip: Grip;
  /** Frequency multiplier from the manual's table; 1 for a lift now and then. */
  readonly frequency?: number;
};

/** The multipliers of the equation; each between 0 and 1. */
export type LiftMultipliers = {
  readonly HM: number;
  readonly VM: number;
  readonly DM: number;
  readonly AM: number;
  readonly FM: number;
  readonly CM: number;
};

const LOAD_CONSTANT = 23;

/**
 * The multipliers of the revised lifting equation, metric: HM 25/H, at most 1, nothing past 63 cm; VM 1 − 0.003 |V − 75|,
 * nothing past 175 cm; DM 0.82 + 4.5/D, at most 1, nothing past 175 cm; AM 1 − 0.0032 A, nothing past 135°; CM 1 for a
 * good grip, 0.95 for a fair one below 75 cm, 0.90 for a poor one. NIOSH 94-110 (1994).
 */
export function liftMultipliers({ reach, height, travel, turn, grip, frequency = 1 }: Lift): LiftMultipliers {
  return {
    HM: reach > 63 ? 0 : Math.min(1, 25 / Math.max(reach, 25)),
    VM: height < 0 || height > 175 ? 0 : 1 - 0.003 * Math.abs(height - 75),
    DM: travel > 175 ? 0 : Math.min(1, 0.82 + 4.5 / Math.max(travel, 25)),
    AM: turn > 135 ? 0 : 1 - 0.0032 * Math.max(0, turn),
    FM: frequency,
    CM: grip === 'good' || (grip === 'fair' && height >= 75) ? 1 : grip === 'fair' ? 0.95 : 0.9,
  };
}

/**
 * The recommended weight limit in kilograms for one person: 23 kg times the multipliers. It says nothing of slippery
 * floors, one-handed lifts, kneeling, carrying or two people at once. NIOSH 94-110 (1994). At its best, hands close and
 * at knuckle height, it is 23 kg.
 */
export function recommendedWeight(lift: Lift): Explained<number> {
  const multipliers = liftMultipliers(lift);
  const { HM, VM, DM, AM, FM, CM } = multipliers;
  return explained(LOAD_CONSTANT * HM * VM * DM * AM * FM * CM, 'recommended-weight', { ...multipliers });
}
