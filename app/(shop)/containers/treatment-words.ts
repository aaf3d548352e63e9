import type { TreatmentKind } from '@/shared/shelf-life/conditions-after';

type Words = { readonly label: string; readonly says: string; readonly withCrystals?: string };

/** Each treatment by name, and what it does and does not do. */
export const TREATED: Readonly<Record<TreatmentKind, Words>> = {
  warmed: {
    label: 'Warmed',
    says: 'Warm it closed in a water bath, as the data sheet says: makers name 50 to 60 °C. Never with a flame.',
    withCrystals: 'The crystals are cleared once it was stirred too, both of it on the day they were seen or later.',
  },
  stirred: {
    label: 'Stirred',
    says: 'To the bottom and round the walls: what settled is in it again.',
    withCrystals:
      'The crystals are cleared once it was warmed too, both of it on the day they were seen or later; undissolved they stay out of the cure and leave soft spots.',
  },
  strained: {
    label: 'Strained',
    says: 'It is kept in the history. Straining takes lumps out; it makes nothing good that is past its date.',
  },
  froze: { label: 'It froze', says: 'It is noted as frozen. Some materials are ruined by it: its verdict says so.' },
  overheated: { label: 'It got too warm', says: 'It is noted as stored out of its range.' },
  'crystals-seen': { label: 'Crystals seen', says: 'They are noted: warm it and stir it before it is used.' },
};
