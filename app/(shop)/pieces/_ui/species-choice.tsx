'use client';

import { useEffect, useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import styles from '@/app/(shop)/pieces/_ui/figures.module.css';
import { NameWood } from '@/app/(shop)/pieces/_ui/name-wood';
import { sayCites } from '@/app/(shop)/pieces/say-cites';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { citesNote } from '@/shared/wood/cites-note';
import { plainName } from '@/shared/wood/plain-name';
import type { Species } from '@/shared/wood/species';
import type { SpeciesMeant } from '@/shared/wood/species-meant';

const NONE = 'none';

/**
 * The species whose figures count for a piece: the one its name means, or the one chosen for that name on this device.
 * `null` where nothing is settled.
 */
export function useSpecies(wood: string, { exact, near }: SpeciesMeant) {
  const settled = exact.length === 1 ? (exact[0] ?? null) : null;
  const [species, setSpecies] = useState<Species | null>(settled);
  const kept = `wood.${plainName(wood)}`;
  useEffect(() => {
    const id = recall(kept);
    if (!id) return;
    if (id === NONE) return setSpecies(null);
    const offered = [...exact, ...near].find((each) => each.id === id);
    if (offered) return setSpecies(offered);
    let isHere = true;
    import('@/shared/wood/all-species').then(
      ({ speciesById }) => isHere && setSpecies((now) => speciesById(id) ?? now),
      // Without the network the list does not come: what the name means stands.
      () => undefined,
    );
    return () => {
      isHere = false;
    };
  }, [kept, exact, near]);
  function choose(next: Species | null) {
    setSpecies(next);
    remember(kept, next?.id ?? NONE);
  }
  return [species, choose] as const;
}

export interface SpeciesChoiceProps {
  /** The piece, where it is in the book. */
  label: string | null;
  order: DateOrder;
  wood: string;
  meant: SpeciesMeant;
  species: Species | null;
  onChoose: (species: Species | null) => void;
}

/** Says whose figures count, and lets the maker choose another species: nearby names, or any it knows by typing. */
export function SpeciesChoice({ label, wood, meant, species, order, onChoose }: SpeciesChoiceProps) {
  const [typed, setTyped] = useState('');
  // Nothing chosen yet is not the same as none of them.
  const [isNone, setIsNone] = useState(false);
  const [found, setFound] = useState<readonly Species[]>([]);
  const offered = [...meant.exact, ...meant.near];
  const others = [...found, ...(species ? [species] : [])].filter(
    (each, index, all) =>
      !offered.some(({ id }) => id === each.id) && all.findIndex(({ id }) => id === each.id) === index,
  );
  const all = [...offered, ...others];
  const cites = species && citesNote(species.botanical);

  async function search(text: string) {
    setTyped(text);
    const { findSpecies } = await import('@/shared/wood/find-species');
    setFound(findSpecies(text, 5));
  }

  return (
    <Fold
      title="Wood"
      now={species ? `figures of ${species.name}` : meant.exact.length > 1 ? 'choose which' : 'not settled'}
    >
      <div className={styles.part}>
        <p>
          {species ? (
            <>
              The figures below are those of {species.name}, <i>{species.botanical}</i>.
            </>
          ) : meant.exact.length === 1 ? (
            'None is chosen, so nothing is worked out that depends on the wood.'
          ) : meant.exact.length > 1 ? (
            `${wood} can mean more than one wood. Choose which.`
          ) : (
            `“${wood}” is no wood whose figures are known here. Choose a near one only if you are sure of it.`
          )}
        </p>
        {cites ? <p>{sayCites(cites, order)}</p> : null}
        {all.length ? (
          <ChoiceChips
            label="Which wood is it?"
            options={[
              ...all.map((each) => ({ value: each.id, label: each.name, hint: each.botanical })),
              { value: NONE, label: 'None of these' },
            ]}
            value={species?.id ?? (isNone ? NONE : '')}
            onChange={(id) => {
              setIsNone(id === NONE);
              onChoose(all.find((each) => each.id === id) ?? null);
            }}
          />
        ) : null}
        {label && species && plainName(species.name) !== plainName(wood) ? (
          <NameWood label={label} species={species} />
        ) : null}
        <TextField
          label="Another wood"
          hint="Its common or botanical name."
          optional
          value={typed}
          onChange={search}
          maxLength={60}
        />
        <p role="status" className={styles.soft}>
          {typed.trim() === ''
            ? `What you choose counts for every piece called ${wood}, on this device, until the book calls it so.`
            : found.length
              ? `${found.length} found: they stand above.`
              : 'Nothing by that name.'}
        </p>
      </div>
    </Fold>
  );
}
