import type { Refusal } from '@/app/_server/refusal';
import type { SheetError } from '@/shared/pour/check-sheet';

/** Why the numbers of a sheet cannot be, as a refusal beside its field. */
export function refuseSheet(error: SheetError): Refusal {
  switch (error.code) {
    case 'ratios-contradict':
      return {
        code: 'ratios-contradict',
        field: 'byMass',
        facts: {
          byMass: error.byMass.toFixed(1),
          fromVolume: error.fromVolume.toFixed(1),
          apart: (error.apartTenths / 10).toFixed(1),
        },
      };
    case 'no-ratio':
      return { code: 'sheet-number', field: 'byMass', facts: { why: 'no-ratio' } };
    case 'no-densities':
      return { code: 'sheet-number', field: 'densityA', facts: { why: 'no-densities' } };
    case 'bad-ratio':
      return { code: 'sheet-number', field: error.by === 'mass' ? 'byMass' : 'byVolume', facts: { why: 'bad-ratio' } };
    case 'outside-range':
    case 'longer-with-more':
    case 'wrong-way-round': {
      const field = error.row === undefined ? error.field : `${error.field}.${error.row}`;
      return { code: 'sheet-number', field, facts: { why: error.code } };
    }
  }
}
