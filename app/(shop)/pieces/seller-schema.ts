import { z } from 'zod';
import type { SellerFigures } from '@/app/_server/shapes/seller-figures';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readVolume } from '@/app/(shop)/pieces/read-volume';
import { nanometres } from '@/shared/units/nanometres';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

/** What a seller said, as typed. Whatever was not said stays empty. */
export function sellerSchema(typing: Typing): z.ZodType<SellerFigures & { label: string }> {
  return z
    .object({
      label: thingLabel,
      name: words(120),
      length: words(40),
      width: words(40),
      thickness: words(40),
      volume: words(40),
      mass: words(40),
      moisture: words(20),
    })
    .transform(({ label, name, ...typed }, context) => {
      const read = readFields(typing, context);
      const length = (field: 'length' | 'width' | 'thickness') => {
        const nm = read.length(field, typed[field], field === 'thickness' ? 'thickness' : 'length');
        return nm === undefined ? null : nanometres(nm);
      };
      const sizes = { lengthNm: length('length'), widthNm: length('width'), thicknessNm: length('thickness') };
      const volume = typed.volume.trim() === '' ? null : readVolume(typed.volume);
      if (volume === undefined) read.say('volume', 'Give board feet or cubic metres, for example 42.5 bf or 0.1 m³.');
      const mass = read.quantity('mass', typed.mass, 'mg') ?? null;
      const mc = typed.moisture.trim() === '' ? null : readMoisture(typed.moisture);
      if (mc && !mc.ok) read.say('moisture', sayMoistureError(mc.error));
      if (context.issues.length > 0 || volume === undefined || (mc && !mc.ok)) return z.NEVER;
      return { label, name, ...sizes, volumeMm3: volume, massMg: mass, mcTenths: mc ? mc.value : null };
    });
}
