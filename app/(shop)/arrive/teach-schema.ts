import { z } from 'zod';
import type { TeachCode } from '@/app/_server/codes/teach-code';
import type { TeachProduct } from '@/app/_server/products/teach-product';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readAnyQuantity } from '@/app/(shop)/arrive/size-text';
import { GHS_CODES } from '@/shared/hazards/ghs-pictograms';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { isMaterialKind } from '@/shared/shelf-life/material-kinds';
import { POLICY_KINDS } from '@/shared/shelf-life/types/policy';
import { gramsPerLitre } from '@/shared/units/density';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { sayQuantityError } from '@/shared/units/say-quantity-error';

const words = (most: number) => z.string().max(most, `At most ${most} characters.`);
const basis = z.enum(['label', 'data-sheet', 'house-default']);
const code = z.string().min(1).max(4096);

/** A product as it is typed when it is taught. */
const typedProduct = z.object({
  code: code.optional(),
  name: words(120),
  maker: words(120),
  kind: words(40),
  size: words(60),
  policyKind: z.enum(POLICY_KINDS),
  statedLife: z.object({ count: words(10), unit: words(10), basis }),
  openedLife: z.object({ count: words(10), unit: words(10), basis }),
  careWindow: words(10),
  freezingRuins: z.boolean(),
  storageLeast: words(20),
  storageMost: words(20),
  colourShows: z.boolean(),
  systemName: words(120),
  hazards: z.array(z.enum(GHS_CODES)).max(GHS_CODES.length),
  safetySheet: words(500),
  tare: words(60),
  density: words(10),
  note: words(1000),
});

export type TypedProduct = z.input<typeof typedProduct>;

/** Reads a taught product where it is written. */
export function productSchema(typing: Typing): z.ZodType<TeachProduct> {
  return typedProduct.transform((typed, context) => {
    const read = readFields(typing, context);
    if (typed.name.trim() === '') read.say('name', 'Type what it is called on the label.');
    if (!isMaterialKind(typed.kind)) read.say('kind', 'Choose what kind of material it is.');
    const size = readAnyQuantity(typed.size, typing.prefer);
    if (!size.ok) read.say('size', sayQuantityError(size.error));
    else if (size.value.amount === 0) read.say('size', 'It must hold more than nothing.');
    const keeps = typed.policyKind === 'keeps';
    const careWindowDays = typed.careWindow.trim() === '' ? 0 : Number(typed.careWindow);
    if (!Number.isInteger(careWindowDays) || careWindowDays < 0 || careWindowDays > 365) {
      read.say('careWindow', 'Give a whole number of days from 0 to 365.');
    }
    const degrees = (field: string, text: string) => {
      if (text.trim() === '') return undefined;
      const temperature = parseTemperature(text, { prefer: typing.prefer });
      return temperature.ok ? temperature.value : read.say(field, 'Give a temperature, for example 15 °C or 60 °F.');
    };
    const storageLeastTenthsC = degrees('storageLeast', typed.storageLeast);
    const storageMostTenthsC = degrees('storageMost', typed.storageMost);
    if ((typed.storageLeast.trim() === '') !== (typed.storageMost.trim() === '')) {
      read.say('storageMost', 'Give both the coldest and the warmest, or neither.');
    }
    const density = () => {
      const text = typed.density.trim();
      if (text === '') return undefined;
      const grams = gramsPerLitre(Number(text.replace(',', '.')));
      if (grams.ok) return Number(grams.value);
      return read.say('density', 'Give whole grams in a litre, from 200 to 20 000. Water is 1000, epoxy about 1100.');
    };
    const part = typed.kind === 'resin-a' ? 'A' : typed.kind === 'resin-b' ? 'B' : undefined;
    const safetySheet = typed.safetySheet.trim();
    if (safetySheet && !isWebAddress(safetySheet)) {
      read.say('safetySheet', 'Give the whole web address, beginning with https://.');
    }
    const product = {
      code: typed.code,
      name: typed.name,
      maker: typed.maker,
      kind: typed.kind,
      tareMg: read.quantity('tare', typed.tare, 'mg'),
      densityGramsPerLitre: density(),
      policyKind: typed.policyKind,
      statedLife: keeps ? undefined : read.life('statedLife', typed.statedLife.count, typed.statedLife.unit),
      statedLifeBasis: typed.statedLife.basis,
      openedLife: keeps ? undefined : read.life('openedLife', typed.openedLife.count, typed.openedLife.unit),
      openedLifeBasis: typed.openedLife.basis,
      careWindowDays,
      freezingRuins: typed.freezingRuins,
      storageLeastTenthsC,
      storageMostTenthsC,
      colourShows: typed.colourShows,
      system: part && typed.systemName.trim() ? ({ name: typed.systemName.trim(), part } as const) : undefined,
      hazards: typed.hazards,
      safetySheet,
      note: typed.note,
    };
    if (!size.ok) return z.NEVER;
    return { ...product, unit: size.value.unit, packageSize: size.value.amount };
  });
}

function isWebAddress(text: string): boolean {
  return URL.canParse(text) && /^https?:$/.test(new URL(text).protocol);
}

/** A code and what it shall mean: a product in a size, a thing with our label, or a place. */
const typedMeaning = z.object({
  code,
  means: z.union([
    z.object({ productId: z.int(), unit: z.enum(['mg', 'uL', 'piece']), size: words(60) }),
    z.object({ ownLabel: words(40) }),
    z.object({ placeLabel: words(20) }),
  ]),
});

export type TypedMeaning = z.input<typeof typedMeaning>;

/** Reads a taught meaning where it is written. */
export function meaningSchema(typing: Typing): z.ZodType<TeachCode> {
  return typedMeaning.transform(({ code, means }, context): TeachCode => {
    const read = readFields(typing, context);
    if ('placeLabel' in means) return { code, means };
    if ('ownLabel' in means) {
      const label = parseOwnLabel(means.ownLabel);
      if (label.ok && label.value.kind !== 'place') return { code, means: { stockLabel: label.value.code } };
      read.say('ownLabel', 'Type or scan the label we gave it, for example C-4K7VMX.');
      return z.NEVER;
    }
    const packageSize = read.quantity('size', means.size, means.unit);
    if (packageSize === 0) read.say('size', 'It must hold more than nothing.');
    return { code, means: { productId: means.productId, packageSize } };
  });
}
