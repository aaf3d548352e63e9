/** What is said of the jobs that lose what they were promised, after a sentence on what was done; nothing where none does. */
export function sayBroken(broken: readonly { job: string }[]): string {
  if (broken.length === 0) return '';
  const jobs = broken.map((each) => each.job);
  const names = jobs.length === 1 ? jobs[0] : `${jobs.slice(0, -1).join(', ')} and ${jobs.at(-1)}`;
  return ` ${names} ${jobs.length === 1 ? 'loses' : 'lose'} what was promised of it: look at what ${jobs.length === 1 ? 'it needs' : 'they need'}.`;
}
