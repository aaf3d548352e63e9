/**
 * How thick a coat is while it is wet, micrometres, from how far a litre goes, in tenths of a square metre: a litre spread
 * over a square metre stands a millimetre high. What evaporates is not in it. `wetFilm(100)`, 10 m² a litre, is 100.
 */
export function wetFilm(coverageTenths: number): number {
  return 10_000 / coverageTenths;
}
