'use client';

import { useId } from 'react';
import { Key, LinkKey } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { DrawnHow, PieceWall } from '@/app/(shop)/_parts/stock/piece-wall';
import { AlsoFound } from '@/app/(shop)/on-hand/_ui/also-found';
import { Materials } from '@/app/(shop)/on-hand/_ui/materials';
import { NothingHere } from '@/app/(shop)/on-hand/_ui/nothing-here';
import styles from '@/app/(shop)/on-hand/_ui/on-hand.module.css';
import { useShelf } from '@/app/(shop)/on-hand/_ui/use-shelf';
import { WoodFilter } from '@/app/(shop)/on-hand/_ui/wood-filter';
import type { Ask } from '@/app/(shop)/on-hand/ask';
import { sayCount, sayTotal } from '@/app/(shop)/on-hand/say-count';
import type { Shelf } from '@/app/(shop)/on-hand/shelf';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { UnitSystem } from '@/shared/units/unit-system';

const SHELVES = [
  { value: 'materials', label: 'Resin, finish, glue' },
  { value: 'wood', label: 'Wood' },
] as const;

interface OnHandProps {
  ask: Ask;
  shelf: Shelf;
  today: CalendarDate;
  /** The woods the book has had. */
  species: readonly string[];
  prefer: UnitSystem;
}

export function OnHand({ ask: asked, shelf: first, today, species, prefer }: OnHandProps) {
  const id = useId();
  const { ask, shown, busy, lost, change, showMore, again } = useShelf({ ask: asked, shelf: first });
  const { shelf } = shown;
  const count = shelf.containers.length + shelf.pieces.length;

  return (
    <>
      <search className={styles.search}>
        <label htmlFor={id} className="unseen">
          Find by name, label, code, lot, place or species
        </label>
        <input
          id={id}
          type="search"
          className={styles.box}
          placeholder="Name, code, lot, place"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="search"
          maxLength={100}
          value={ask.query}
          onChange={(typed) => change({ ...ask, query: typed.currentTarget.value }, true)}
        />
        <fieldset className={styles.shelves}>
          <legend className="unseen">Shelf</legend>
          {SHELVES.map(({ value, label }) => (
            <label key={value} className={styles.shelf}>
              <input
                type="radio"
                className="unseen"
                name={`${id}-shelf`}
                checked={ask.show === value}
                onChange={() => change({ ...ask, show: value })}
              />
              <span>{label}</span>
            </label>
          ))}
        </fieldset>
        <label className={styles.switch}>
          <input
            type="checkbox"
            checked={ask.withEmpty}
            onChange={(flip) => change({ ...ask, withEmpty: flip.currentTarget.checked })}
          />
          Also what is used up
        </label>
      </search>
      {ask.show === 'wood' ? (
        <WoodFilter
          filter={ask.wood}
          species={species}
          prefer={prefer}
          onChange={(wood, soon) => change({ ...ask, wood }, soon)}
        />
      ) : null}

      <p className={styles.count} role="status">
        {busy === 'finding' ? 'Looking' : sayCount(shelf, shown.ask)}
      </p>
      {lost ? (
        <PlainError
          happened={lost.happened}
          kept="What you typed is still here; the list below is from before."
          toDo={lost.toDo}
        >
          <Key variant="ghost" onClick={again}>
            Try again
          </Key>
        </PlainError>
      ) : null}

      <AlsoFound shelf={shelf} />
      {count === 0 ? (
        <NothingHere
          ask={shown.ask}
          shelf={shelf}
          also={shelf.places.length + shelf.products.length + shelf.jobs.length > 0}
          change={change}
        />
      ) : null}
      {shelf.containers.length > 0 ? <Materials rows={shelf.containers} today={today} /> : null}
      {shelf.pieces.length > 0 ? (
        <>
          <div className={styles.more}>
            <LinkKey variant="ghost" href="/on-hand/fits">
              What can a top be cut from?
            </LinkKey>
            <LinkKey variant="ghost" href="/on-hand/wall">
              Wall of slabs
            </LinkKey>
          </div>
          <DrawnHow rows={shelf.pieces} />
          <PieceWall rows={shelf.pieces} label="Wood" />
        </>
      ) : null}
      {shelf.next !== null ? (
        <div className={styles.more}>
          <Key variant="ghost" pending={busy === 'more'} pendingWords="Fetching more" onClick={() => void showMore()}>
            Show more
          </Key>
          <p>
            {count.toLocaleString('en')} of {sayTotal(shelf.total ?? count, shelf.more)} are shown.
          </p>
        </div>
      ) : null}
    </>
  );
}
