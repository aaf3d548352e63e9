/** The kind of the entry that strikes out a reading; its reference is the reading's number. */
export const STRUCK = 'reading-struck';

/** The strikings that stand: one that was reversed lets its reading count again. */
export const STRIKES = { kind: STRUCK, reversedBy: null } as const;

/** Of a thing's entries those that strike a reading. */
export const struckSelect = {
  entries: { where: STRIKES, select: { reference: true } },
} as const;

/** Of readings those that count. */
export function standing<R extends { id: number }>(
  readings: readonly R[],
  entries: readonly { reference: string }[],
): R[] {
  const struck = new Set(entries.map(({ reference }) => reference));
  return readings.filter(({ id }) => !struck.has(String(id)));
}
