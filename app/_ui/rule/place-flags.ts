import { roomFor } from '@/app/_ui/rule/rule-ticks';

export interface Flag {
  /** Place of its line on the rule, 0 to 1. */
  readonly at: number;
  readonly words: string;
}

/** Where the words of a flag go: a side of its line, and a row above the band, 0 the nearest. */
export interface Spot {
  readonly side: 'left' | 'right';
  readonly row: number;
}

function span(flag: Flag, side: 'left' | 'right', width: number): [number, number] {
  const line = flag.at * width;
  const room = roomFor(flag.words) + 6;
  return side === 'right' ? [line, line + room] : [line - room, line];
}

function cost(flags: readonly Flag[], spots: readonly Spot[], width: number): number {
  let faults = 0;
  flags.forEach((flag, index) => {
    const spot = spots[index];
    if (!spot) return;
    const [start, end] = span(flag, spot.side, width);
    if (start < 0 || end > width) faults += 50;
    faults += spot.row * 3 + (spot.side === 'left' ? 1 : 0);
    flags.forEach((other, otherIndex) => {
      const otherSpot = spots[otherIndex];
      if (!otherSpot || otherIndex === index) return;
      const [otherStart, otherEnd] = span(other, otherSpot.side, width);
      if (otherSpot.row === spot.row && start < otherEnd && otherStart < end) faults += 100;
      const line = other.at * width;
      if (otherSpot.row > spot.row && line > start && line < end) faults += 100;
    });
  });
  return faults;
}

/**
 * Finds for each flag a side of its line and a row above the band so that no words overlap, no line crosses another's
 * words, and as few rows as possible are used. Tries every arrangement: there are at most three flags on a rule.
 */
export function placeFlags<T extends Flag>(flags: readonly T[], width: number): (T & Spot)[] {
  let best: { spots: Spot[]; faults: number } | undefined;
  const choices: Spot[] = flags.flatMap((_, row) => [
    { side: 'right' as const, row },
    { side: 'left' as const, row },
  ]);
  const search = (spots: Spot[]) => {
    if (spots.length < flags.length) {
      for (const choice of choices) search([...spots, choice]);
      return;
    }
    const faults = cost(flags, spots, width);
    if (!best || faults < best.faults) best = { spots, faults };
  };
  search([]);
  return flags.map((flag, index) => ({ ...flag, ...(best?.spots[index] ?? { side: 'right' as const, row: index }) }));
}
