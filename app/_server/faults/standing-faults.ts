/** Faults whose entry is not reversed. */
export const FAULT_STANDS = { entry: { reversedBy: null } };

/** Whether an entry that stands settled it. */
export const isSettled = ({ settledBy }: { settledBy: { reversedBy: unknown } | null }): boolean =>
  settledBy !== null && settledBy.reversedBy === null;
