'use client';

import { TextField } from '@/app/_ui/field/text-field';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import type { RoomRead } from '@/app/(shop)/pieces/read-room';
import type { UnitSystem } from '@/shared/units/unit-system';

export type TypedRoom = { temperature: string; humidity: string };

/** The air of the room a piece stands in, as the thermometer and the hygrometer show it. */
export function RoomFields({
  room,
  read,
  prefer,
  onChange,
}: {
  room: TypedRoom;
  read: RoomRead;
  prefer: UnitSystem;
  onChange: (room: TypedRoom) => void;
}) {
  return (
    <div className={styles.pair}>
      <TextField
        label={`Temperature, ${prefer === 'metric' ? '°C' : '°F'}`}
        inputMode="decimal"
        maxLength={12}
        value={room.temperature}
        onChange={(temperature) => onChange({ ...room, temperature })}
        error={read.problems.temperature}
      />
      <TextField
        label="Humidity, %"
        inputMode="decimal"
        maxLength={8}
        value={room.humidity}
        onChange={(humidity) => onChange({ ...room, humidity })}
        error={read.problems.humidity}
      />
    </div>
  );
}
