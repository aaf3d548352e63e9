'use client';

import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { TextField } from '@/app/_ui/field/text-field';
import styles from '@/app/(shop)/places/_ui/places.module.css';
import { readTypedAir } from '@/app/(shop)/places/read-typed-air';
import type { Problem } from '@/shared/result/answer';
import type { UnitSystem } from '@/shared/units/unit-system';

type TypedAir = { temperature: string; humidity: string };

export interface AirFieldsProps {
  typed: TypedAir;
  onChange: (typed: TypedAir) => void;
  prefer: UnitSystem;
  problem: Problem | undefined;
}

/** Temperature and humidity side by side, and what wood settles at in such air. */
export function AirFields({ typed, onChange, prefer, problem }: AirFieldsProps) {
  const refused = useFieldErrors(problem, { ...typed });
  const { emc, problems } = readTypedAir(typed, prefer);
  const wrong = (field: keyof TypedAir) => refused[field] ?? (typed[field].trim() === '' ? undefined : problems[field]);
  return (
    <>
      <div className={styles.pair}>
        <TextField
          label={`Temperature, ${prefer === 'metric' ? '°C' : '°F'}`}
          value={typed.temperature}
          onChange={(temperature) => onChange({ ...typed, temperature })}
          error={wrong('temperature')}
          inputMode="decimal"
          maxLength={20}
        />
        <TextField
          label="Humidity, %"
          value={typed.humidity}
          onChange={(humidity) => onChange({ ...typed, humidity })}
          error={wrong('humidity')}
          inputMode="decimal"
          maxLength={10}
        />
      </div>
      {emc === undefined ? null : <p className={styles.echo}>Wood settles at {emc.toFixed(1)} % in such air.</p>}
    </>
  );
}
