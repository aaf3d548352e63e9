/** One line of Watch: the same id as long as it is the same matter. */
export type BellLine = { readonly id: string; readonly words: string };

/** What a device remembers: the lines it has told of or seen, each with the day it last saw it. */
export type BellMemory = { readonly [id: string]: string };

/** What goes is remembered for so many days, so that a line that comes and goes does not ring each time. */
const REMEMBERED = 7;

/**
 * Which lines are new to this device, and what it remembers from now on. A line is told once, and never twice on one day;
 * what was away for a week and comes again is new again.
 */
export function newLines(
  lines: readonly BellLine[],
  memory: BellMemory,
  today: string,
): { fresh: readonly BellLine[]; memory: BellMemory } {
  const kept = Object.entries(memory).filter(([, day]) => daysApart(day, today) <= REMEMBERED);
  const next = Object.fromEntries([...kept, ...lines.map(({ id }) => [id, today] as const)]);
  const known = new Set(kept.map(([id]) => id));
  return { fresh: lines.filter(({ id }) => !known.has(id)), memory: next };
}

const daysApart = (from: string, to: string) => Math.abs(Date.parse(to) - Date.parse(from)) / 86_400_000;

/** What a bell says of new lines: a title, and the first few of them. */
export function sayNewLines(fresh: readonly BellLine[]): { title: string; body: string } {
  const first = fresh.slice(0, 3).map(({ words }) => words);
  const more = fresh.length - first.length;
  return {
    title: fresh.length === 1 ? 'One thing needs you' : `${fresh.length} things need you`,
    body: [...first, more > 0 ? `and ${more} more in Watch` : ''].filter(Boolean).join('\n'),
  };
}
