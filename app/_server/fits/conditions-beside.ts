import type { FitCondition } from '@/app/_server/fits/conditions-of-piece';
import type { DryBy } from '@/app/_server/fits/dry-by';
import type { FitAsk } from '@/app/_server/fits/fit-ask';
import type { PieceLine } from '@/app/_server/stock/load-piece';

/** What follows from the rest of the question: heartwood, weight, the day it is to be dry, and a sister left alone. */
export function conditionsBeside(
  line: PieceLine,
  ask: FitAsk,
  { dry, topGrams }: { readonly dry: DryBy | undefined; readonly topGrams: number | undefined },
): FitCondition[] {
  const { mostGrams, request, make } = ask;
  const sister = line.pairedWith;
  return [
    ...(request.heartwoodOnly && line.sapwoodNm === null ? [{ code: 'sapwood-unknown' as const }] : []),
    ...(mostGrams === undefined
      ? []
      : topGrams === undefined
        ? [{ code: 'weight-unknown' as const }]
        : topGrams > mostGrams
          ? [{ code: 'too-heavy' as const, grams: topGrams, by: topGrams - mostGrams }]
          : []),
    ...dryConditions(dry),
    ...(sister?.inStock && make.of === 'one' ? [{ code: 'splits-pair' as const, sister: sister.label }] : []),
  ];
}

function dryConditions(dry: DryBy | undefined): FitCondition[] {
  if (!dry) return [];
  if (!dry.known) return [{ code: 'dry-unknown', because: dry.because }];
  return dry.daysLate > 0 ? [{ code: 'dry-late', on: dry.dates.likely, latest: dry.dates.latest }] : [];
}

/**
 * Where a day is asked for, how wet it is today stops nothing: the forecast speaks. A piece that is taken to be dry as it was
 * last read still says that this was long ago.
 */
export function isAnsweredBy(dry: DryBy, { code }: FitCondition): boolean {
  if (dry.known && !dry.isForecast && code === 'reading-old') return false;
  return code === 'wet' || code === 'no-reading' || code === 'reading-old';
}
