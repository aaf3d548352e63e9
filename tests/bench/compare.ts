import { ask, type Question, type Told } from './ask';

export type Times = { median: number; p95: number };

/** The app's own route and the bare one for the same question, in one run. */
export type Compared = { ours: Times; bare: Times; ratio: number };

/** A question to the app, and the bare question that asks for the same, which may depend on what the app answered. */
export type Pair = { ours: Question; bare: (told: Told) => Question };

/** A server on one size of book, and what to ask of it. */
export type Side = { origin: string; pairs: readonly Pair[] };

/** A small question that is not counted: a server left alone for a moment answers its next question late. */
const WAKE: Question = { path: '/api/bench/bare/on-hand?q=zzzz' };

/**
 * Asks every server in turn, the app and then the bare route, pair by pair, never two at once, so that whatever else the
 * machine does touches all alike; what the app has just read is warm for the bare route, never the other way round. The
 * first `warmUp` rounds are not counted.
 */
export async function compare(
  sides: readonly Side[],
  { count, warmUp }: { count: number; warmUp: number },
): Promise<Compared[]> {
  const taken = sides.map(() => ({ ours: [] as number[], bare: [] as number[] }));
  for (let nr = 0; nr < warmUp + count; nr += 1) {
    for (const [at, { origin, pairs }] of sides.entries()) {
      const pair = pairs[nr % pairs.length];
      if (!pair) throw new Error('There is nothing to ask.');
      await ask(origin, WAKE);
      const told = await ask(origin, pair.ours);
      const bareTold = await ask(origin, pair.bare(told));
      if (nr < warmUp) continue;
      taken[at]?.ours.push(told.ms);
      taken[at]?.bare.push(bareTold.ms);
    }
  }
  return taken.map((each) => {
    const times = { ours: timesOf(each.ours), bare: timesOf(each.bare) };
    return { ...times, ratio: times.ours.median / times.bare.median };
  });
}

function timesOf(all: number[]): Times {
  const sorted = [...all].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95) };
}
