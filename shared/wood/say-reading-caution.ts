import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { ReadingCaution } from '@/shared/wood/summarise-readings';

const percent = (tenths: number) => `${tenths / 10} %`;

/** What a set of readings cannot be trusted for, in a sentence. `core-not-read` → "Nobody read its middle." and what to do. */
export function sayReadingCaution(
  caution: ReadingCaution,
  prefer: UnitSystem,
): { readonly says: string; readonly todo?: string } {
  switch (caution.code) {
    case 'too-few':
      return {
        says: `${caution.count} of ${caution.needed} readings a piece of this size wants.`,
        todo: 'Read more places, mid-length and on both faces.',
      };
    case 'near-the-end':
      return {
        says: `${caution.count === 1 ? 'One reading is' : `${caution.count} readings are`} near an end, where wood dries first.`,
        todo: `Read at least ${printLength(caution.keepAway, { prefer })} from each end.`,
      };
    case 'above-the-meter':
      return {
        says: `${percent(caution.mcTenths)} is above what this meter can say for sure (${percent(caution.sureTo)}): take it as wet.`,
      };
    case 'below-the-meter':
      return { says: `${percent(caution.mcTenths)} is below what this meter can say (${percent(caution.from)}).` };
    case 'core-not-read':
      return { says: 'It is thick and nobody read its middle.', todo: 'Use insulated pins at half its thickness.' };
    case 'core-wetter':
      return {
        says: `Its core reads ${percent(caution.coreTenths)}, its faces ${percent(caution.shellTenths)}: it will move after flattening.`,
        todo: 'Let it dry until they are within a point or two.',
      };
    case 'place-not-noted':
      return {
        says: `For ${caution.count === 1 ? 'one reading' : `${caution.count} readings`} the place was not noted.`,
      };
    case 'meters-differ':
      return { says: 'They were taken with different kinds of meter.', todo: 'Use one meter for one piece.' };
  }
}
