import { LIMIT_BASES, type Limit } from '@/shared/shelf-life/types/limit';

/**
 * The limit that decides: the earliest effective one, and of two on the same day the earlier in `LIMIT_BASES`. Undefined
 * when none is effective. Of best before 31 Dec and an opened life to 1 Dec, it is the opened life.
 */
export function governingLimit(limits: readonly Limit[]): Limit | undefined {
  const rank = (limit: Limit) => LIMIT_BASES.indexOf(limit.basis);
  return limits
    .filter((limit) => limit.effective)
    .reduce<Limit | undefined>((best, limit) => {
      if (!best || limit.lastGoodDay < best.lastGoodDay) return limit;
      return limit.lastGoodDay === best.lastGoodDay && rank(limit) < rank(best) ? limit : best;
    }, undefined);
}
