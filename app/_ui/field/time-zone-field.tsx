'use client';

import { useEffect, useId, useRef, useState } from 'react';
import styles from '@/app/_ui/field/field.module.css';
import { FieldError } from '@/app/_ui/field/field-shell';
import { sayZone, searchZones, zoneTitle } from '@/app/_ui/field/search-zones';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';

const MOST = 8;

let known: { zone: string; title: string }[] | undefined;

/** Every zone this browser knows, with its title. Made at the first search: it takes some hundred formatters. */
function allZones() {
  known ??= [...new Set([...Intl.supportedValuesOf('timeZone'), 'UTC'])].map((zone) => ({
    zone,
    title: zoneTitle(zone),
  }));
  return known;
}

const timeIn = (zone: string, now: Date) =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  }).format(now);

/** The workshop's time zone: what it is, what time that makes it, and a search through all others. */
export function TimeZoneField({
  value,
  onChange,
  error,
}: {
  value: string;
  onChange: (zone: string) => void;
  error?: string;
}) {
  const id = useId();
  const [searching, setSearching] = useState(false);
  const [typed, setTyped] = useState('');
  const [now, setNow] = useState<Date>();
  const group = useRef<HTMLFieldSetElement>(null);
  const back = useRef(false);
  // The server's clock would not agree with this device's when the page wakes up.
  useEffect(() => setNow(new Date()), []);
  const found = searching ? searchZones(allZones(), typed, MOST) : [];

  const close = () => {
    setSearching(false);
    setTyped('');
    back.current = true;
  };
  // The search's own keys are gone by then: the focus goes back to the one that opened it.
  useEffect(() => {
    if (searching || !back.current) return;
    back.current = false;
    group.current?.querySelector('button')?.focus();
  }, [searching]);

  return (
    <fieldset
      ref={group}
      aria-describedby={error ? `${id}-error` : undefined}
      className={styles.field}
      onKeyDown={(press) => {
        if (press.key !== 'Escape' || !searching) return;
        press.preventDefault();
        close();
      }}
    >
      <legend className={styles.label}>Time zone</legend>
      <p className={styles.hint}>The workshop’s own day decides what is past its date.</p>
      <p className={styles.chosen}>{value ? sayZone(value) : 'Not chosen yet'}</p>
      <p className={styles.echo} aria-live="polite">
        {value && now ? `It is ${timeIn(value, now)} there.` : null}
      </p>
      {error ? <FieldError id={`${id}-error`}>{error}</FieldError> : null}
      {searching ? (
        <>
          <TextField
            label="Find a time zone"
            hint="By a large city, a continent or its name: Denver, Asia, Central European."
            value={typed}
            onChange={setTyped}
            autoFocus
            spellCheck={false}
            enterKeyHint="search"
          />
          <ul className={styles.matches} aria-label="Time zones found">
            {found.map((zone) => (
              <li key={zone}>
                <button
                  type="button"
                  className={styles.chip}
                  onClick={() => {
                    onChange(zone);
                    close();
                  }}
                >
                  <span>{sayZone(zone)}</span>
                  {now ? <span className={styles.chipHint}>{timeIn(zone, now)}</span> : null}
                </button>
              </li>
            ))}
          </ul>
          <p className={styles.hint} role="status">
            {typed.trim() !== '' && found.length === 0
              ? 'None is called that. Try a larger city in the same zone.'
              : null}
          </p>
          <Key variant="ghost" onClick={close}>
            Keep {value ? sayZone(value) : 'it open'}
          </Key>
        </>
      ) : (
        <Key variant="ghost" onClick={() => setSearching(true)}>
          Choose another time zone
        </Key>
      )}
    </fieldset>
  );
}
