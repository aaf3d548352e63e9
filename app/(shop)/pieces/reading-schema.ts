import { z } from 'zod';
import type { NewReading, RecordReadings } from '@/app/_server/stock/record-readings';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readAcross } from '@/app/(shop)/pieces/read-across';
import { sayTemperatureError } from '@/app/(shop)/places/say-temperature-error';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { sayLengthError } from '@/shared/units/say-length-error';
import { meterWords } from '@/shared/wood/meter-words';
import { METER_KINDS } from '@/shared/wood/moisture-reading';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

const row = z.object({ moisture: words(20), along: words(40), across: words(40), depth: words(40), spot: words(120) });

/** Readings as typed. A row whose moisture is empty was not taken, as long as another was. */
export function readingSchema(typing: Typing): z.ZodType<RecordReadings> {
  return z
    .object({
      label: thingLabel,
      takenOn: words(60),
      kind: z.enum(METER_KINDS),
      meter: words(80),
      speciesSetting: words(80),
      woodTemperature: words(40),
      correctsItself: z.boolean(),
      readings: z.array(row).min(1).max(MOST_AT_ONCE),
    })
    .transform(({ kind, meter, woodTemperature, speciesSetting, readings: rows, ...typed }, context) => {
      const read = readFields(typing, context);
      const takenOn = read.day('takenOn', typed.takenOn);
      if (typed.takenOn.trim() === '') read.say('takenOn', 'Give the day it was read.');
      const isAlone = rows.every(({ moisture }) => moisture.trim() === '');
      const readings = rows.flatMap((each, at): NewReading[] => {
        if (each.moisture.trim() === '' && !(isAlone && at === 0)) return [];
        const field = (name: string) => `readings.${at}.${name}`;
        const mc = readMoisture(each.moisture);
        if (!mc.ok) read.say(field('moisture'), sayMoistureError(mc.error));
        const across = readAcross(each.across, typing.prefer);
        if (across && !across.ok) read.say(field('across'), sayLengthError(across.error, typing));
        const alongNm = read.length(field('along'), each.along) ?? null;
        const depthNm = read.length(field('depth'), each.depth) ?? null;
        if (!mc.ok || (across && !across.ok)) return [];
        return [{ mcTenths: mc.value, alongNm, acrossNm: across?.value ?? null, depthNm, spot: each.spot.trim() }];
      });
      const degrees = woodTemperature.trim() === '' ? null : parseTemperature(woodTemperature, typing);
      if (degrees && !degrees.ok) read.say('woodTemperature', sayTemperatureError(degrees.error, typing.prefer));
      if (!takenOn || context.issues.length > 0) return z.NEVER;
      return {
        label: typed.label,
        takenOn,
        meter: meterWords(kind, meter),
        meterKind: kind === 'pin' || kind === 'pinless' ? kind : ('' as const),
        speciesSetting: speciesSetting.trim(),
        woodTenthsC: degrees?.ok ? degrees.value : null,
        correctsItself: typed.correctsItself,
        readings,
      };
    });
}
