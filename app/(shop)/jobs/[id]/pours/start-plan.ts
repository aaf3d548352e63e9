import type { KeptRiver } from '@/app/_server/pours/kept-river';
import type { VoidChoices } from '@/app/_server/pours/void-choices';
import { sealOfBanks } from '@/app/(shop)/jobs/[id]/pours/seal-of-banks';
import { anotherStation, SQUARE, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

type StartFrom = {
  units: UnitSystem;
  systemId: number | undefined;
  first: string;
  /** A river that was searched for. */
  river?: Pick<KeptRiver, 'finished' | 'banks'> | undefined;
  /** The fills that are meant, where some were named; all of them otherwise. */
  wanted?: readonly string[] | undefined;
};

/** What a new pour begins with: usual allowances, each to be put right by the maker's own. Common practice. */
export function startPlan({ fills }: VoidChoices, { units, systemId, first, river, wanted }: StartFrom): TypedPlan {
  const metric = units === 'metric';
  return {
    name: river ? 'River' : '',
    systemId: systemId === undefined ? '' : String(systemId),
    from: river ? 'river' : fills.length > 0 ? 'drawing' : 'form',
    fills: typedFills({ fills }, units, river ? [] : wanted),
    shape: 'cylinder',
    measures: {},
    wood: '',
    stations: [anotherStation(), anotherStation(), anotherStation()],
    depth: '',
    riverDepth: river ? printLengthExact(river.finished, units) : '',
    sealArea: river ? sealOfBanks(river.banks, river.finished, units) : '',
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

/** Every fill of the drawings, those that are meant ticked. */
export function typedFills(
  { fills }: Pick<VoidChoices, 'fills'>,
  units: UnitSystem,
  wanted?: readonly string[],
): TypedPlan['fills'] {
  return fills.map(({ id, label, what, area, depth }) => ({
    id,
    name: `${label.slice(0, 1)}-${label.slice(1)}, ${what}`,
    on: !wanted || wanted.includes(id),
    area: String(Math.round((area / SQUARE[units]) * 100) / 100),
    depth: printLengthExact(depth, units),
  }));
}
