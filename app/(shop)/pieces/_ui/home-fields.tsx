'use client';

import { TextField } from '@/app/_ui/field/text-field';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { readRoom } from '@/app/(shop)/pieces/read-room';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The air of a home over the year, as typed. */
export type TypedHome = { dry: string; damp: string; temperature: string };

/** The driest and the dampest air where a piece will live. */
export function HomeFields({
  home,
  prefer,
  onChange,
}: {
  home: TypedHome;
  prefer: UnitSystem;
  onChange: (home: TypedHome) => void;
}) {
  const problems = (humidity: string) => readRoom({ temperature: home.temperature, humidity }, prefer).problems;
  return (
    <>
      <div className={styles.pair}>
        <TextField
          label="Driest air, %"
          inputMode="decimal"
          maxLength={8}
          value={home.dry}
          onChange={(dry) => onChange({ ...home, dry })}
          error={problems(home.dry).humidity}
        />
        <TextField
          label="Dampest air, %"
          inputMode="decimal"
          maxLength={8}
          value={home.damp}
          onChange={(damp) => onChange({ ...home, damp })}
          error={problems(home.damp).humidity}
        />
      </div>
      <TextField
        label={`Room, ${prefer === 'metric' ? '°C' : '°F'}`}
        inputMode="decimal"
        maxLength={12}
        value={home.temperature}
        onChange={(temperature) => onChange({ ...home, temperature })}
        error={problems(home.dry).temperature}
      />
    </>
  );
}
