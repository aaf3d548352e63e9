'use client';

import { useEffect, useState } from 'react';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import type { DateOrder } from '@/shared/calendar/date-readings';

interface OriginFoldProps {
  origin: string;
  /** As it is typed: what the Convention lists of it is said here, where papers are asked for. */
  species: string;
  order: DateOrder;
  onChange: (origin: string) => void;
  error?: string | undefined;
}

/** Where the tree stood, and whether trade in its wood is controlled. */
export function OriginFold({ origin, species, order, onChange, error }: OriginFoldProps) {
  const notes = useCites(species, order);
  return (
    <Fold title="Origin" now={notes.length ? 'listed by CITES: keep the papers' : origin || 'where the tree stood'}>
      <TextField
        label="Origin"
        hint="Where the tree stood, as the seller’s papers say."
        optional
        maxLength={120}
        value={origin}
        onChange={onChange}
        error={error}
      />
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
    </Fold>
  );
}

/** What CITES lists of a species as it is typed. The lists come after the page; without the network nothing is said. */
function useCites(species: string, order: DateOrder): readonly string[] {
  const [notes, setNotes] = useState<readonly string[]>([]);
  useEffect(() => {
    let isWanted = true;
    if (species.trim() === '') return setNotes([]);
    import('@/app/(shop)/pieces/cites-of-word').then(
      ({ citesOfWord }) => {
        if (isWanted) setNotes(citesOfWord(species, order));
      },
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, [species, order]);
  return notes;
}
