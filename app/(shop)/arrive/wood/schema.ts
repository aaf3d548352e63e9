import { z } from 'zod';
import type { ReceiveOneSize } from '@/app/_server/stock/receive-wood';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readCommon } from '@/app/(shop)/arrive/wood/read-common';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { GRAINS, MOST_FLITCH_NUMBER, PIECE_FLAGS, PIECE_FORMS, SURFACINGS } from '@/shared/wood/piece';

const words = (most: number) => z.string().max(most, `At most ${most} characters.`);

/** Wood as it is typed. */
export const typedWood = z.object({
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
  origin: words(120),
  sapwood: words(60),
  quarters: words(2),
  surfacing: z.enum(['', ...SURFACINGS]),
  grain: z.enum(['', ...GRAINS]),
  faceA: words(120),
  faceB: words(120),
  tally: z.object({
    as: z.enum(['pack', 'singly']),
    lines: z
      .array(z.object({ width: words(30), length: words(30) }))
      .max(MOST_AT_ONCE, `At most ${MOST_AT_ONCE} boards at once.`)
      .readonly(),
    width: words(30),
    length: words(30),
    sellerName: words(120),
    sellerBoardFeet: words(20),
  }),
  moisture: words(20),
  meter: words(80),
  spot: words(120),
  photo: z.instanceof(Blob).optional(),
});

export type TypedWood = z.input<typeof typedWood>;

/** Reads wood of one size where it is written. */
export function woodSchema(typing: Typing): z.ZodType<ReceiveOneSize> {
  return typedWood.transform((typed, context) => {
    const read = readFields(typing, context);
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
    const flitchNumber =
      typed.flitchNumber.trim() === '' ? undefined : read.count('flitchNumber', typed.flitchNumber, MOST_FLITCH_NUMBER);
    const common = readCommon(typed, typing, read);
    if (
      lengthNm === undefined ||
      thicknessNm === undefined ||
      widthStartNm === undefined ||
      widthMiddleNm === undefined ||
      widthEndNm === undefined ||
      count === undefined ||
      common === undefined
    ) {
      return z.NEVER;
    }
    return {
      ...common,
      form: typed.form,
      count,
      lengthNm,
      widthStartNm,
      widthMiddleNm,
      widthEndNm,
      thicknessNm,
      flitchNumber,
      grain: typed.grain || undefined,
      faceA: typed.faceA,
      faceB: typed.faceB,
    };
  });
}
