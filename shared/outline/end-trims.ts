import type { EndChecks } from '@/shared/outline/defect';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

export type EndTrims = { readonly start: Nanometres; readonly end: Nanometres };

/**
 * What is cut off each end before anything is made: the end trim asked for, or the checks there where they run further
 * in. A trim of 50 mm at an end with checks of 120 mm is 120 mm. Depths and trims are zero or more.
 */
export function endTrims(trims: EndTrims, checks: readonly EndChecks[]): EndTrims {
  const deepest = (end: 'start' | 'end') =>
    checks.reduce((most, check) => (check.end === end ? Math.max(most, check.depth) : most), Number(trims[end]));
  return { start: nanometres(deepest('start')), end: nanometres(deepest('end')) };
}
