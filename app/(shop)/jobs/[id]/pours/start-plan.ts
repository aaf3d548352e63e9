import type { VoidChoices } from '@/app/_server/pours/void-choices';
import { SQUARE, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What a new pour begins with: usual allowances, each to be put right by the maker's own. Common practice. */
export function startPlan(
  { fills }: VoidChoices,
  { units, systemId, first }: { units: UnitSystem; systemId: number | undefined; first: string },
): TypedPlan {
  const metric = units === 'metric';
  return {
    name: '',
    systemId: systemId === undefined ? '' : String(systemId),
    from: fills.length > 0 ? 'drawing' : 'form',
    fills: typedFills({ fills }, units),
    shape: 'cylinder',
    measures: {},
    wood: '',
    stations: [
      { at: '', width: '' },
      { at: '', width: '' },
      { at: '', width: '' },
    ],
    depth: '',
    sealArea: '',
    sealRate: metric ? '250' : '0.8',
    leakage: '3',
    loss: metric ? '20 mL' : '0.7 fl oz',
    room: metric ? '20 °C' : '68 °F',
    bucket: metric ? '5 kg' : '11 lb',
    minutes: '5',
    step: '1 g',
    lifts: '',
    first,
    reason: '',
  };
}

/** Every fill of the drawings, ticked. */
export function typedFills({ fills }: Pick<VoidChoices, 'fills'>, units: UnitSystem): TypedPlan['fills'] {
  return fills.map(({ id, label, what, area, depth }) => ({
    id,
    name: `${label.slice(0, 1)}-${label.slice(1)}, ${what}`,
    on: true,
    area: String(Math.round((area / SQUARE[units]) * 100) / 100),
    depth: printLengthExact(depth, units),
  }));
}
