import type { PourFigures } from '@/app/_server/pours/kept-plan';
import { SQUARE, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { printLengthExact } from '@/shared/units/print-length-exact';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { printTemperature } from '@/shared/units/print-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The figures of a plan as somebody would type them, for one that was not made on the form. Metric allowances. */
export function typeFigures(figures: PourFigures, units: UnitSystem): Partial<TypedPlan> {
  const { space } = figures;
  const length = (value: Parameters<typeof printLengthExact>[0]) => printLengthExact(value, units);
  const rest: Partial<TypedPlan> = {
    leakage: String(figures.leakagePercent),
    loss: printQuantityExact(figures.lossPerBatch, 'uL'),
    room: printTemperature(figures.room, { prefer: units }),
    bucket: printQuantityExact(figures.bucket, 'mg'),
    minutes: String(figures.minutesPerKilogram),
    step: printQuantityExact(figures.step, 'mg'),
    lifts: figures.lifts === undefined ? '' : String(figures.lifts),
    ...(units === 'metric' &&
      figures.sealArea > 0 && {
        sealArea: String(figures.sealArea / 1e6),
        sealRate: String(figures.sealPerSquareMetre / 1000),
      }),
  };
  if (space.from === 'fills') {
    const fills = space.fills.map(({ area, depth }, nr) => ({
      id: `kept/${nr}`,
      name: `As planned, ${nr + 1}`,
      on: true,
      area: String(Math.round((area / SQUARE[units]) * 100) / 100),
      depth: length(depth),
    }));
    return { ...rest, from: 'drawing', fills };
  }
  if (space.from === 'stations') {
    const stations = space.widths.map(({ at, width, bottom, depth }) => ({
      at: length(at),
      width: length(width),
      bottom: bottom === undefined ? '' : length(bottom),
      depth: depth === undefined ? '' : length(depth),
    }));
    return { ...rest, from: 'stations', depth: length(space.depth), stations };
  }
  const { shape, ...measures } = space.solid;
  const typed = Object.fromEntries(Object.entries(measures).map(([name, value]) => [name, length(value)]));
  const isForm = shape === 'box';
  return {
    ...rest,
    from: isForm ? 'form' : 'shape',
    shape,
    measures: typed,
    wood: space.wood > 0 ? printQuantityExact(space.wood, 'uL') : '',
  };
}
