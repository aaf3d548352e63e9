type Moments = {
  /** As the entry has it: noon of its day where only the day is known. */
  happenedAt: Date;
  writtenAt: Date;
  weighed: readonly { at: string }[];
};

/**
 * The instant a lift was poured at. Written down on the day itself, that is when it was written; of another day only the day
 * is known, and noon stands for it, or the last weighing where that was later.
 */
export function pouredAt({ happenedAt, writtenAt, weighed }: Moments): { at: string; isExact: boolean } {
  if (happenedAt.getTime() === writtenAt.getTime()) return { at: happenedAt.toISOString(), isExact: true };
  const moments = [happenedAt.toISOString(), ...weighed.map(({ at }) => at)].sort();
  return { at: moments.at(-1) ?? happenedAt.toISOString(), isExact: false };
}
