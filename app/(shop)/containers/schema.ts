import { z } from 'zod';
import { happenedOn, readTemperature, thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { leftByWeight, sayWeighedError } from '@/app/(shop)/containers/left-by-weight';
import { TREATMENT_KINDS } from '@/shared/shelf-life/conditions-after';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';
import { printQuantity } from '@/shared/units/print-quantity';
import { milligrams, type StockUnit } from '@/shared/units/stock-unit';

export const conditionSchema = z.object({
  label: thingLabel,
  conditions: z.array(z.enum(CONDITIONS)),
  why: words(500),
});

/** When it was opened, as typed. */
export function openSchema(typing: Typing) {
  return z
    .object({ label: thingLabel, opened: words(60), sureness: z.enum(['known', 'guessed']), why: words(500) })
    .transform((typed, context) => {
      const read = readFields(typing, context);
      const on = read.day('opened', typed.opened);
      if (typed.opened.trim() === '') read.say('opened', 'Give the day, or your best guess of it.');
      return on ? { label: typed.label, opened: { on, sureness: typed.sureness }, why: typed.why } : z.NEVER;
    });
}

const typedWeighing = z.object({
  label: thingLabel,
  way: z.enum(['left', 'gross']),
  left: words(60),
  gross: words(60),
  tare: words(60),
  why: words(300),
  happenedOn,
});

/** What the book knows of the container that is weighed. */
export type WeighedThing = { unit: StockUnit; densityGramsPerLitre: number | null };

/** What is left, typed directly or as weights, read where it is written. */
export function weighSchema(typing: Typing, { unit, densityGramsPerLitre }: WeighedThing) {
  return typedWeighing.transform((typed, context) => {
    const read = readFields(typing, context);
    const { label, way } = typed;
    const own = typed.why.trim();
    const day = read.day('happenedOn', typed.happenedOn ?? '');
    if (way === 'left') {
      const left = read.quantity('left', typed.left, unit);
      if (typed.left.trim() === '') read.say('left', 'Type what is left, with its unit; 0 when it is empty.');
      return left === undefined ? z.NEVER : { label, left, why: own, happenedOn: day };
    }
    const gross = read.quantity('gross', typed.gross, 'mg');
    const tare = read.quantity('tare', typed.tare, 'mg');
    if (typed.gross.trim() === '') read.say('gross', 'Type the weight with the container.');
    if (typed.tare.trim() === '') read.say('tare', 'Type what the empty container weighs.');
    if (gross === undefined || tare === undefined) return z.NEVER;
    const weighed = leftByWeight({ gross: milligrams(gross), tare: milligrams(tare) }, unit, densityGramsPerLitre);
    if (!weighed.ok) {
      read.say('gross', sayWeighedError(weighed.error));
      return z.NEVER;
    }
    const say = (mg: number) => printQuantity(milligrams(mg), 'mg', { prefer: typing.prefer });
    const computed = weighed.value.computed ? `, the volume computed from ${densityGramsPerLitre} g/L` : '';
    const how = `${say(gross)} with the container, ${say(tare)} empty${computed}`;
    return { label, left: weighed.value.left, why: [how, own].filter(Boolean).join('. '), happenedOn: day };
  });
}

/** What was done to the content of a container, as typed. */
export function treatSchema(typing: Typing) {
  return z
    .object({
      label: thingLabel,
      kind: z.enum(TREATMENT_KINDS, 'Say what was done.'),
      doneOn: words(60),
      temperature: words(40),
      minutes: words(10),
      note: words(500),
    })
    .transform(({ temperature, ...typed }, context) => {
      const read = readFields(typing, context);
      const doneOn = read.day('doneOn', typed.doneOn);
      if (typed.doneOn.trim() === '') read.say('doneOn', 'Give the day.');
      const tenthsC = readTemperature(temperature, typing, read);
      const minutes = typed.minutes.trim() === '' ? undefined : read.count('minutes', typed.minutes, 9999);
      return doneOn ? { ...typed, doneOn, tenthsC, minutes } : z.NEVER;
    });
}
