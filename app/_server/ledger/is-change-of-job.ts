/**
 * Whether an entry is a change of a job that freed its pieces. It is not reversed: giving the pieces back would leave them
 * with a job that stays done or dropped. The job is changed again instead.
 */
export const isChangeOfJob = ({ kind }: { kind: string }): boolean =>
  kind === 'job-changed' || kind === 'job-stage-set';
