import type { Fact } from '@/app/_ui/facts';
import type { Life } from '@/shared/calendar/life';
import { sayLife } from '@/shared/calendar/say-life';
import { massRatio } from '@/shared/pour/check-ratio';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { printLength } from '@/shared/units/print-length';
import { printQuantity } from '@/shared/units/print-quantity';
import { printTemperature } from '@/shared/units/print-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

/** Whether the numbers stand on a sheet. */
export const sayFrom = ({ from }: Pick<ResinSheet, 'from'>): string =>
  from === 'sheet' ? 'from the data sheet' : 'typed, no sheet';

/** The ratio in a few words: `100 to 45 by mass`. */
export function sayRatio(sheet: Pick<ResinSheet, 'byMass' | 'byVolume'>): string {
  const { byMass, byVolume } = sheet;
  const said = [
    byMass ? `${byMass.a} to ${byMass.b} by mass` : '',
    byVolume ? `${byVolume.a} to ${byVolume.b} by volume` : '',
  ];
  return said.filter(Boolean).join(', ');
}

/** Whether the ratios hold together, in a sentence; undefined while there is too little to tell. */
export function sayRatioCheck(
  sheet: Pick<ResinSheet, 'byMass' | 'byVolume' | 'densityA' | 'densityB'>,
): { ok: boolean; says: string } | undefined {
  const checked = massRatio(sheet);
  const figure = (value: number) => String(Math.round(value * 10) / 10);
  if (checked.ok) {
    const { parts, from, apartTenths } = checked.value;
    const per = figure((100 * parts.b) / parts.a);
    if (from === 'volume-and-densities') {
      return { ok: true, says: `Volumes and densities make it 100 to ${per} by mass.` };
    }
    return apartTenths === undefined
      ? undefined
      : { ok: true, says: `Mass, volumes and densities agree, ${figure(apartTenths / 10)} % apart: 100 to ${per}.` };
  }
  if (checked.error.code !== 'ratios-contradict') return undefined;
  const { byMass, fromVolume, apartTenths } = checked.error;
  return {
    ok: false,
    says: `By mass it says 100 to ${figure(byMass)}; volumes and densities make it 100 to ${figure(fromVolume)}. They are ${figure(apartTenths / 10)} % apart: one of the numbers is misread.`,
  };
}

/** The facts of a sheet as terms and values. */
export function sheetFacts(sheet: ResinSheet, prefer: UnitSystem): Fact[] {
  const length = (value: ResinSheet['depths'][number]['most']) => printLength(value, { prefer });
  const degrees = (value: NonNullable<ResinSheet['leastRoom']>) => printTemperature(value, { prefer });
  const { againFromHours: from, againToHours: to, leastRoom, mostRoom } = sheet;
  const facts: (Fact | false)[] = [
    { term: 'Ratio', value: sayRatio(sheet) || 'not given' },
    ...sheet.depths.map(({ least, most, upTo, mostMass }, nr): Fact => {
      const depth = least > 0 ? `${length(least)} to ${length(most)}` : `up to ${length(most)}`;
      const room = upTo === undefined ? '' : `, in a room up to ${degrees(upTo)}`;
      const mass = mostMass === undefined ? '' : `, no more than ${printQuantity(mostMass, 'mg', { prefer })}`;
      return { term: nr === 0 ? 'One lift' : `One lift, row ${nr + 1}`, value: `${depth}${room}${mass}` };
    }),
    ...(sheet.potLives ?? []).map(
      ({ minutes, mass, at }, nr): Fact => ({
        term: nr === 0 ? 'Pot life' : `Pot life, row ${nr + 1}`,
        value: `${minutes} min for ${printQuantity(mass, 'mg', { prefer })} at ${degrees(at)}`,
      }),
    ),
    (from ?? to) !== undefined && {
      term: 'Pour again',
      value: `${from === undefined ? 'up' : `from ${from}`} ${to === undefined ? 'hours on' : `to ${to} hours`}, then sand first`,
    },
    sheet.demouldHours !== undefined && { term: 'Demould', value: `after ${sheet.demouldHours} hours` },
    sheet.fullCureDays !== undefined && { term: 'Cured through', value: `after ${sheet.fullCureDays} days` },
    (leastRoom ?? mostRoom) !== undefined && {
      term: 'Room',
      value: `${leastRoom === undefined ? '' : `from ${degrees(leastRoom)} `}${mostRoom === undefined ? 'up' : `to ${degrees(mostRoom)}`}`,
    },
    sheet.shrinkageHundredths !== undefined && {
      term: 'Shrinks',
      value: `${sheet.shrinkageHundredths / 100} % by volume`,
    },
    sheet.setsTogether === true && { term: 'Sets', value: 'A and B of one lot only' },
  ];
  return facts.filter((fact) => fact !== false);
}

export function sayLives({ statedLife, openedLife }: { statedLife: Life | null; openedLife: Life | null }): string {
  const said = [statedLife ? `${sayLife(statedLife)} sealed` : '', openedLife ? `${sayLife(openedLife)} opened` : ''];
  return said.filter(Boolean).join(', ') || 'no life stated';
}
