'use client';

import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { TextField } from '@/app/_ui/field/text-field';
import styles from '@/app/(shop)/pieces/_ui/reading-act.module.css';
import { sayTemperatureError } from '@/app/(shop)/places/say-temperature-error';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { printTemperature } from '@/shared/units/print-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';
import { correctForTemperature } from '@/shared/wood/correct-for-temperature';
import { METER_KIND_WORDS } from '@/shared/wood/meter-words';
import { METER_KINDS, type MeterKind } from '@/shared/wood/moisture-reading';

/** The meter as it is set, all of it words so that the device can remember it. `correctsItself` is empty for no. */
export type TypedMeter = { kind: string; meter: string; speciesSetting: string; correctsItself: string };

export const kindOf = (typed: TypedMeter): MeterKind => METER_KINDS.find((kind) => kind === typed.kind) ?? 'unknown';

export interface MeterFieldsProps {
  typed: TypedMeter;
  onChange: (typed: TypedMeter) => void;
  woodTemperature: string;
  onTemperature: (text: string) => void;
  /** What the meter shows, tenths of a per cent: says at once what it is taken as. */
  shows: number | undefined;
  prefer: UnitSystem;
  errors: Readonly<Record<string, string | undefined>>;
}

/** Which meter, how it is set, and how warm the wood is. */
export function MeterFields({
  typed,
  onChange,
  woodTemperature,
  onTemperature,
  shows,
  prefer,
  errors,
}: MeterFieldsProps) {
  const set = (name: keyof TypedMeter) => (value: string) => onChange({ ...typed, [name]: value });
  const kind = kindOf(typed);
  const read = (text: string): Echo => {
    const degrees = parseTemperature(text, { prefer });
    if (!degrees.ok) return { ok: false, says: sayTemperatureError(degrees.error, prefer) };
    const said = printTemperature(degrees.value, { prefer });
    if (typed.correctsItself || shows === undefined) return { ok: true, says: said };
    const corrected = correctForTemperature(shows, degrees.value, kind);
    if (corrected.ok)
      return {
        ok: true,
        says: `${said}: ${shows / 10} % is taken as ${corrected.value.value.correctedTenths / 10} %. Both are kept.`,
      };
    return corrected.error.code === 'only-for-pin-meters'
      ? { ok: true, says: `${said}. Only pin meters are corrected: it is kept beside the reading.` }
      : { ok: false, says: 'Too cold or too hot to correct for: use the table of the meter’s maker.' };
  };
  return (
    <>
      <ChoiceChips
        label="Kind of meter"
        optional
        options={METER_KINDS.map((value) => ({ value, label: METER_KIND_WORDS[value] }))}
        value={kind}
        onChange={set('kind')}
      />
      <TextField
        label="Meter"
        hint="Its name, if there is more than one in the shop."
        optional
        value={typed.meter}
        onChange={set('meter')}
        maxLength={60}
        error={errors.meter}
      />
      <TextField
        label="Set to the wood"
        hint="The species or group the meter was set to."
        optional
        value={typed.speciesSetting}
        onChange={set('speciesSetting')}
        maxLength={80}
        error={errors.speciesSetting}
      />
      <QuantityField
        label="Temperature of the wood"
        hint="Pins read low in cold wood and high in warm wood. Empty: it is taken as shown."
        optional
        value={woodTemperature}
        onChange={onTemperature}
        read={read}
        maxLength={40}
        error={errors.woodTemperature}
      />
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={typed.correctsItself !== ''}
          onChange={(flip) => set('correctsItself')(flip.currentTarget.checked ? 'yes' : '')}
        />
        The meter corrects for temperature itself
      </label>
    </>
  );
}
