import { riverQuestion } from '@/app/(shop)/on-hand/fits/river-question';

/** What of an answer is poured: the river between its pieces, or what is marked on one to be filled. */
export type FitPour = {
  readonly of: 'river' | 'fills';
  readonly labels: readonly string[];
  /** Numbers of the marks that lie in the top. */
  readonly marks: readonly number[];
};

/** Where the pour of an answer is planned: for the job the search is for, or where one is chosen. */
export function pourHref(query: string, { of, labels, marks }: FitPour, jobId?: number): string {
  const params = new URLSearchParams(
    of === 'river' ? riverQuestion(Object.fromEntries(new URLSearchParams(query))) : '',
  );
  params.set('pieces', labels.join(' '));
  if (marks.length > 0) params.set('marks', marks.join(' '));
  return `${jobId === undefined ? '/jobs/pour-for' : `/jobs/${jobId}/pours/new`}?${params}`;
}
