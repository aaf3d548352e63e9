'use client';

import { memo, useDeferredValue, useId, useState } from 'react';
import { Empty } from '@/app/_ui/empty';
import { Key } from '@/app/_ui/keys';
import shelf from '@/app/(shop)/on-hand/_ui/on-hand.module.css';
import styles from '@/app/(shop)/species/_ui/species.module.css';
import type { SpeciesRow } from '@/app/(shop)/species/species-rows';
import { plainName } from '@/shared/wood/plain-name';
import type { WoodSourceId } from '@/shared/wood/sources';

type Sources = Partial<Record<WoodSourceId, string>>;

export interface SpeciesListProps {
  rows: readonly SpeciesRow[];
  sources: Sources;
  query: string;
}

/** The woods of the handbook, found as their names are typed; one that is alone is open. */
export function SpeciesList({ rows, sources, query }: SpeciesListProps) {
  const id = useId();
  const [typed, setTyped] = useState(query);
  const wanted = useDeferredValue(plainName(typed)).split(' ');
  const found = rows.filter(({ searched }) => wanted.every((word) => word === '' || searched.includes(` ${word}`)));
  return (
    <>
      <search className={styles.search}>
        <label htmlFor={id} className="unseen">
          Find a wood by its name, its botanical name, or another name
        </label>
        <input
          id={id}
          type="search"
          className={shelf.box}
          placeholder="Name, botanical name"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          maxLength={100}
          value={typed}
          onChange={(change) => setTyped(change.currentTarget.value)}
        />
      </search>
      <p role="status" className={styles.count}>
        {found.length === rows.length ? '' : `${found.length} of ${rows.length} woods`}
      </p>
      {found.length === 0 ? (
        <Empty title={`No wood found for “${typed.trim()}”.`} toDo="Try fewer letters, or its botanical name.">
          <Key variant="ghost" onClick={() => setTyped('')}>
            Show all
          </Key>
        </Empty>
      ) : null}
      <ul className={styles.list} aria-label="Species">
        {found.map((row) => (
          <Wood key={row.id} row={row} sources={sources} open={found.length === 1} />
        ))}
      </ul>
      <p className={styles.note}>
        Specific gravity is dry weight over the volume at that moisture, against water. Shrinkage is from green to
        ovendry, of the green size. Movement is the change per size for one per cent of moisture content, between 6 and
        14 %. What is not known here is said so, and never guessed.
      </p>
    </>
  );
}

const Wood = memo(function Wood({ row, sources, open }: { row: SpeciesRow; sources: Sources; open: boolean }) {
  return (
    <li className={styles.wood} id={row.id}>
      <details open={open}>
        <summary className={styles.line}>
          <span className={styles.names}>
            <b>{row.name}</b> <i>{row.botanical}</i>
            {row.cites ? <span className={styles.listed}>CITES</span> : null}
          </span>
          <span className={styles.short}>{row.short}</span>
        </summary>
        {row.also ? <p className={styles.also}>Also {row.also}.</p> : null}
        <dl className={styles.figures}>
          {row.figures.map(({ term, value, source }) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>
                <b>{value ?? 'Unknown'}</b>
                {source ? <span className={styles.source}>{sources[source]}</span> : null}
              </dd>
            </div>
          ))}
        </dl>
        {row.cites ? <p className={styles.also}>{row.cites}</p> : null}
      </details>
    </li>
  );
});
