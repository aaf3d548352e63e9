import type { FitAsk, WhatFits } from '@/app/_server/fits/what-fits';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The question in chips, each a term and what it says: `top`, `78 in × 36 in, corners 4 in`. */
export function sayQuestion(ask: FitAsk, prefer: UnitSystem): { term: string; says: string }[] {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const { shape, edgeAllowance, trims, grainWindow } = ask.request;
  return [
    { term: 'top', says: sayTop(shape, say) },
    ...(ask.thickness === undefined ? [] : [{ term: 'finished', says: say(ask.thickness) }]),
    ...(ask.mostTenths === undefined ? [] : [{ term: 'moisture', says: `${ask.mostTenths / 10} % or less` }]),
    { term: 'edges', says: `less ${say(edgeAllowance)}` },
    { term: 'ends', says: `less ${say(trims.start)}` },
    { term: 'grain', says: `along, ±${grainWindow}°` },
    { term: 'wood', says: [ask.species ?? 'any species', ask.freeOnly ? 'free only' : ''].filter(Boolean).join(', ') },
  ];
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
export function sayLooked({ ranked, looked, total, cut }: WhatFits): string {
  const yes = ranked.filter(({ judged }) => judged.fit.answer === 'yes').length;
  const nearly = ranked.length - yes;
  const found = [
    yes > 0 ? `${yes} ${yes === 1 ? 'fits' : 'fit'}` : 'none fits',
    ...(nearly > 0 ? [`${nearly} nearly ${nearly === 1 ? 'fits' : 'fit'}`] : []),
  ].join(', ');
  const pieces = `${looked.toLocaleString('en')} ${looked === 1 ? 'piece was' : 'pieces were'} looked at: ${found}.`;
  if (!cut) return pieces;
  const rest = (total - looked).toLocaleString('en');
  return cut === 'time'
    ? `${pieces} Time ran out with ${rest} smaller ones left: choose a species to look at fewer.`
    : `${pieces} ${rest} smaller ones were left out: choose a species to reach them.`;
}
