/**
 * Of facts that rest on an entry and may be taken off by another, those that stand: their own entry is not reversed, and
 * no entry that stands took them off.
 */
export const STANDS = {
  entry: { reversedBy: null },
  OR: [{ removedById: null }, { removedBy: { reversedBy: { isNot: null } } }],
};
