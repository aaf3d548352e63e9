import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import { judgePiece, type PieceVerdict } from '@/shared/wood/judge-piece';
import { readMoisture } from '@/shared/wood/read-moisture';

type Measured = Pick<
  PieceLine,
  'form' | 'species' | 'lengthNm' | 'widthStartNm' | 'widthMiddleNm' | 'widthEndNm' | 'thicknessNm' | 'facts'
>;

type Context = {
  readonly today: CalendarDate;
  readonly order: 'day-first' | 'month-first';
  readonly prefer: UnitSystem;
};

/** The piece as far as it is typed, for its drawing; undefined until there is a length and a width to draw. */
export function typedPiece(wood: TypedWood, { prefer }: Context): Measured | undefined {
  const read = (text: string, mode: 'length' | 'thickness' = 'length') => {
    const length = parseLength(text, { prefer, mode });
    return length.ok && length.value > 0 ? length.value : undefined;
  };
  const lengthNm = read(wood.length);
  const typed =
    wood.widths === 'one' ? [read(wood.width)] : [read(wood.widthStart), read(wood.widthMiddle), read(wood.widthEnd)];
  // Until all three are typed, a missing one is drawn as wide as the one before it.
  const any = typed.find((width) => width !== undefined);
  if (lengthNm === undefined || any === undefined) return undefined;
  const start = typed[0] ?? any;
  const middle = typed[1] ?? start;
  return {
    form: wood.form,
    species: wood.species.trim() || 'Wood',
    lengthNm,
    widthStartNm: start,
    widthMiddleNm: middle,
    widthEndNm: typed[2] ?? middle,
    thicknessNm: read(wood.thickness, 'thickness') ?? nanometres(0),
    facts: { inStock: true, hold: 'free', flags: wood.flags, readings: [], form: wood.form },
  };
}

/** How the wood stands at the door: too wet, broken, strapped, or never read. */
export function judgeWood(wood: TypedWood, context: Context): PieceVerdict {
  const moisture = readMoisture(wood.moisture);
  const received = readTypedDate(wood.receivedOn, { ...context, aim: 'past' });
  const takenOn = received.ok && received.value.date <= context.today ? received.value.date : context.today;
  const readings = moisture.ok ? [{ takenOn, mcTenths: moisture.value }] : [];
  return judgePiece({ inStock: true, hold: 'free', flags: wood.flags, readings, form: wood.form }, context.today);
}
