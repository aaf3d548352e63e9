import type { FitAsk } from '@/app/_server/fits/fit-ask';
import type { WhatFits } from '@/app/_server/fits/what-fits';
import type { SaidDates } from '@/app/(shop)/on-hand/fits/say-fit';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { sayDate } from '@/shared/calendar/say-date';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The question in chips, each a term and what it says: `top`, `78 in × 36 in, corners 4 in`. */
export function sayQuestion(
  ask: FitAsk,
  { prefer, ...dates }: { prefer: UnitSystem } & SaidDates,
): { term: string; says: string }[] {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const { shape, edgeAllowance, trims, grainWindow } = ask.request;
  return [
    { term: 'top', says: sayTop(shape, say) },
    ...sayMake(ask.make, say),
    ...(ask.thickness === undefined ? [] : [{ term: 'finished', says: say(ask.thickness) }]),
    ...(ask.mostTenths === undefined ? [] : [{ term: 'moisture', says: `${ask.mostTenths / 10} % or less` }]),
    ...(ask.dryBy === undefined ? [] : [{ term: 'by', says: sayDate(ask.dryBy, dates) }]),
    ...(ask.mostGrams === undefined
      ? []
      : [{ term: 'weight', says: `${sayMass(ask.mostGrams / 1000, prefer)} or less` }]),
    { term: 'marked to fill', says: ask.request.filling ? 'may be in the top' : 'kept out' },
    ...(ask.request.heartwoodOnly ? [{ term: 'heartwood', says: 'only' }] : []),
    { term: 'edges', says: `less ${say(edgeAllowance)}` },
    { term: 'ends', says: `less ${say(trims.start)}` },
    { term: 'grain', says: `along, ±${grainWindow}°` },
    { term: 'wood', says: [ask.species ?? 'any species', ask.freeOnly ? 'free only' : ''].filter(Boolean).join(', ') },
  ];
}

function sayMake(make: FitAsk['make'], say: (length: Nanometres) => string): { term: string; says: string }[] {
  if (make.of === 'one') return [];
  if (make.of === 'pair') return [{ term: 'of', says: 'two sisters, bookmatched' }];
  return [{ term: 'of', says: `two pieces, a river of ${say(make.river.least)} or more between` }];
}

function sayTop(shape: FitAsk['request']['shape'], say: (length: Nanometres) => string): string {
  if (shape.kind === 'round') return `round, ${say(shape.diameter)}`;
  const size = `${say(shape.length)} × ${say(shape.width)}`;
  switch (shape.kind) {
    case 'rectangle':
      return shape.cornerRadius > 0 ? `${size}, corners ${say(shape.cornerRadius)}` : size;
    case 'oval':
      return `oval, ${size}`;
    case 'superellipse':
      return `superellipse ${shape.exponent}, ${size}`;
  }
}

/** How much was looked at and what came of it: `31 pieces were looked at: 4 fit, 3 nearly fit.` */
export function sayLooked(
  { ranked, together, looked, total, cut }: WhatFits,
  make: FitAsk['make'] = { of: 'one' },
): string {
  const answers = [...ranked, ...together].map(({ judged }) => judged.fit.answer);
  const yes = answers.filter((answer) => answer === 'yes').length;
  const nearly = answers.length - yes;
  const found = [
    yes > 0 ? `${yes} ${yes === 1 ? 'fits' : 'fit'}` : 'none fits',
    ...(nearly > 0 ? [`${nearly} nearly ${nearly === 1 ? 'fits' : 'fit'}`] : []),
  ].join(', ');
  const [one, many] = make.of === 'one' ? ['piece was', 'pieces were'] : ['pairing was', 'pairings were'];
  const pieces = `${looked.toLocaleString('en')} ${looked === 1 ? one : many} looked at: ${found}.`;
  if (!cut) return pieces;
  if (cut === 'stopped') return `${pieces} It was stopped with ${(total - looked).toLocaleString('en')} left.`;
  // What time ran out for is looked at while the answer is read: the page says how far it is.
  if (cut === 'time') return pieces;
  return `${pieces} ${(total - looked).toLocaleString('en')} smaller ones were left out: choose a species to reach them.`;
}
