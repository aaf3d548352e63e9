import type { Program, Term } from '@/shared/allocation/program';

/**
 * A programme in the CPLEX-LP text form, which most solvers read: objective, rows, bounds, whole numbers. Lines stay well
 * below the 510 characters that the form allows. An empty objective is written as nought times a variable.
 */
export function writeProgram({ minimise, rows, most, whole }: Program): string {
  const some = rows[0]?.terms[0]?.name ?? 'nothing';
  return [
    'Minimize',
    ` obj:${writeTerms(minimise.length ? minimise : [{ name: some, times: 0 }])}`,
    'Subject To',
    ...rows.map(({ terms, sense, bound }, nr) => ` r${nr}:${writeTerms(terms)} ${sense} ${bound}`),
    'Bounds',
    ...[...most].map(([name, bound]) => ` 0 <= ${name} <= ${bound}`),
    ...(whole.size ? ['General', ...[...whole].map((name) => ` ${name}`)] : []),
    'End',
    '',
  ].join('\n');
}

function writeTerms(terms: readonly Term[]): string {
  return terms
    .map(({ name, times }, nr) => {
      const sign = times < 0 ? '-' : '+';
      return `${nr > 0 && nr % 8 === 0 ? '\n ' : ''} ${sign} ${Math.abs(times)} ${name}`;
    })
    .join('');
}
