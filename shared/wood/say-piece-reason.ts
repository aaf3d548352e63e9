import type { PieceReason } from '@/shared/wood/judge-piece';

/** A piece's reason as a sentence, and what to do. `wet`, 114 → "Reads 11.4 %, more than 10 %." */
export function sayPieceReason(reason: PieceReason): { says: string; todo?: string } {
  switch (reason.code) {
    case 'gone':
      return { says: 'It is no longer in the shop.' };
    case 'held':
      return {
        says:
          reason.hold === 'quarantine'
            ? 'It is in quarantine.'
            : reason.hold === 'recalled'
              ? 'It is recalled.'
              : 'It is on hold.',
        todo: 'Release it on its page first, with a reason.',
      };
    case 'promised-elsewhere':
      return { says: `It is promised to ${reason.job}.`, todo: 'Free it there, or take another.' };
    case 'wet':
      return {
        says: `Reads ${reason.mcTenths / 10} %, more than ${reason.mostTenths / 10} %.`,
        todo: 'Let it dry and read it again; the meter in the wood decides.',
      };
    case 'no-reading':
      return { says: 'Its moisture was never read.', todo: 'Read it mid-length, away from ends and knots.' };
    case 'reading-old':
      return { says: `The last moisture reading is ${reason.days} days old.`, todo: 'Read it again before cutting.' };
    case 'broken':
      return { says: 'It is broken.', todo: 'Measure what is whole.' };
    case 'strapped':
      return {
        says: 'It is strapped: it may spring or part when the bands are cut.',
        todo: 'Clamp it and stand clear before you cut a band.',
      };
    case 'checked':
      return { says: 'It has checks.', todo: 'Trim or fill them; measure what is left.' };
    case 'twisted':
      return { says: 'It is twisted.', todo: 'Flattening will cost thickness.' };
    case 'live-edge-left':
    case 'live-edge-right':
      return { says: 'It has a live edge.' };
  }
}
