import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';

/** The form with another species: the log and the origin that came over from the piece before are not this wood's. */
export function ofAnotherWood(now: TypedWood, first: TypedWood, species: string): TypedWood {
  const isCarried = first.species !== '' && species.trim().toLowerCase() !== first.species.trim().toLowerCase();
  if (!isCarried) return { ...now, species };
  const kept = <K extends 'flitch' | 'flitchNumber' | 'origin'>(name: K) =>
    now[name] === first[name] ? '' : now[name];
  return { ...now, species, flitch: kept('flitch'), flitchNumber: kept('flitchNumber'), origin: kept('origin') };
}
