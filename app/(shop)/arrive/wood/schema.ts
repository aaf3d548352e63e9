import { z } from 'zod';
import type { ReceiveWood } from '@/app/_server/stock/receive-wood';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { MOST_FLITCH_NUMBER, PIECE_FLAGS, PIECE_FORMS } from '@/shared/wood/piece';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

const words = (most: number) => z.string().max(most, `At most ${most} characters.`);

/** Wood as it is typed. */
const typedWood = z.object({
  form: z.enum(PIECE_FORMS),
  species: words(80),
  count: words(10),
  length: words(60),
  widths: z.enum(['one', 'three']),
  width: words(60),
  widthStart: words(60),
  widthMiddle: words(60),
  widthEnd: words(60),
  thickness: words(60),
  flags: z.array(z.enum(PIECE_FLAGS)).max(PIECE_FLAGS.length),
  flitch: words(80),
  flitchNumber: words(10),
  cost: words(60),
  receivedOn: words(60),
  placeLabel: words(20),
  note: words(2000),
  moisture: words(20),
  meter: words(80),
  spot: words(120),
  photo: z.instanceof(Blob).optional(),
});

export type TypedWood = z.input<typeof typedWood>;

/** Reads the wood form where it is written. */
export function woodSchema(typing: Typing): z.ZodType<ReceiveWood> {
  return typedWood.transform((typed, context) => {
    const read = readFields(typing, context);
    if (typed.species.trim() === '') read.say('species', 'Say what wood it is.');
    const needed = (field: string, text: string, mode: 'length' | 'thickness' = 'length') => {
      if (text.trim() === '')
        return read.say(
          field,
          mode === 'thickness' ? 'How thick is it? 8/4 will do.' : 'This is needed to know what can be cut from it.',
        );
      return read.length(field, text, mode);
    };
    const lengthNm = needed('length', typed.length);
    const thicknessNm = needed('thickness', typed.thickness, 'thickness');
    const one = typed.widths === 'one' ? needed('width', typed.width) : undefined;
    const width = (field: 'widthStart' | 'widthMiddle' | 'widthEnd') =>
      typed.widths === 'one' ? one : needed(field, typed[field]);
    const widthStartNm = width('widthStart');
    const widthMiddleNm = width('widthMiddle');
    const widthEndNm = width('widthEnd');
    const count = read.count('count', typed.count);
    const receivedOn = typed.receivedOn.trim() === '' ? typing.today : read.day('receivedOn', typed.receivedOn);
    const flitchNumber =
      typed.flitchNumber.trim() === '' ? undefined : read.count('flitchNumber', typed.flitchNumber, MOST_FLITCH_NUMBER);
    const costMinor = read.money('cost', typed.cost);
    const moisture = typed.moisture.trim() === '' ? undefined : readMoisture(typed.moisture);
    if (moisture && !moisture.ok) read.say('moisture', sayMoistureError(moisture.error));
    if (
      lengthNm === undefined ||
      thicknessNm === undefined ||
      widthStartNm === undefined ||
      widthMiddleNm === undefined ||
      widthEndNm === undefined ||
      count === undefined ||
      receivedOn === undefined
    ) {
      return z.NEVER;
    }
    return {
      form: typed.form,
      species: typed.species.trim(),
      count,
      lengthNm,
      widthStartNm,
      widthMiddleNm,
      widthEndNm,
      thicknessNm,
      flags: typed.flags,
      flitch: typed.flitch,
      flitchNumber,
      costMinor,
      receivedOn,
      placeLabel: typed.placeLabel || undefined,
      note: typed.note,
      reading: moisture?.ok
        ? { mcTenths: moisture.value, meter: typed.meter.trim(), spot: typed.spot.trim() }
        : undefined,
      photo: typed.photo && typed.photo.size > 0 ? typed.photo : undefined,
    };
  });
}
