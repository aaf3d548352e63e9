import { ask, type Question, type Told } from './ask';

export type Times = { median: number; p95: number };

/** The app's own route and the bare one for the same question, in one run. */
export type Compared = { ours: Times; bare: Times; ratio: number };

/** A question to the app, and the bare question that asks for the same, which may depend on what the app answered. */
export type Pair = { ours: Question; bare: (told: Told) => Question };

/**
 * Asks the app and then the bare route, pair by pair, never two at once, so that whatever else the machine does touches
 * both alike; what the app has just read is warm for the bare route, never the other way round. The first `warmUp` pairs
 * are not counted.
 */
export async function compare(
  origin: string,
  pairs: readonly Pair[],
  { count, warmUp }: { count: number; warmUp: number },
): Promise<Compared> {
  const ours: number[] = [];
  const bare: number[] = [];
  for (let nr = 0; nr < warmUp + count; nr += 1) {
    const pair = pairs[nr % pairs.length];
    if (!pair) throw new Error('There is nothing to ask.');
    const told = await ask(origin, pair.ours);
    const bareTold = await ask(origin, pair.bare(told));
    if (nr < warmUp) continue;
    ours.push(told.ms);
    bare.push(bareTold.ms);
  }
  const times = { ours: timesOf(ours), bare: timesOf(bare) };
  return { ...times, ratio: times.ours.median / times.bare.median };
}

function timesOf(all: number[]): Times {
  const sorted = [...all].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95) };
}
