'use client';

import Link from 'next/link';
import type { Sighting } from '@/app/_server/stocktake/note-seen';
import type { WalkThing } from '@/app/_server/stocktake/walk-of';
import { Code } from '@/app/_ui/code';
import { Fold } from '@/app/_ui/fold';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import { CountIt } from '@/app/(shop)/stocktake/_ui/count-it';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { sayThing } from '@/app/(shop)/stocktake/say-walk';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { UnitSystem } from '@/shared/units/unit-system';

const KEPT: Readonly<Record<Extract<Sighting, { kind: 'kept' }>['means'], string>> = {
  product: 'That is the maker’s code. Scan our own label on it; if it has none, book it in under Arrive.',
  'unknown-product': 'A maker’s code that this book was never taught. Book it in under Arrive.',
  'not-in-book': 'A label of ours that this book never gave.',
  unknown: 'That means nothing in this book.',
};

/** What the last scan was, in a word and a sentence, and what is in it. */
export function LastSeen({
  stocktake,
  sighting,
  prefer,
  onCounted,
}: {
  stocktake: number;
  sighting: Sighting;
  prefer: UnitSystem;
  onCounted: (thing: WalkThing) => void;
}) {
  if (sighting.kind === 'place') {
    return (
      <VerdictPanel word="use" size="small" headline={[`${sighting.name} is a place.`, 'Scan what stands in it.']} />
    );
  }
  if (sighting.kind === 'kept') {
    return (
      <VerdictPanel
        word="care"
        size="small"
        headline={[`Kept: ${sighting.says || sighting.code}`, KEPT[sighting.means]]}
      />
    );
  }
  const { thing, again } = sighting;
  const { word, says, why } = sayThing(thing, prefer);
  const sealed = thing.kind === 'container' && !thing.opened && thing.status !== 'back';
  const count = (
    <CountIt key={thing.stockId} stocktake={stocktake} thing={thing} prefer={prefer} onCounted={onCounted} />
  );
  return (
    <div className={styles.last}>
      <VerdictPanel
        word={word}
        size="small"
        headline={[`${says.charAt(0).toUpperCase()}${says.slice(1)}${again ? ', seen before' : ''}.`, why]}
      />
      <p className={styles.name}>
        <Link href={thingHref(thing.label)}>{thing.name}</Link>{' '}
        <Code>{printOwnLabel(thing.label as OwnLabelCode)}</Code>
      </p>
      {thing.kind === 'piece' ? null : sealed ? (
        <Fold title="Not full?" now="Sealed by the book: nothing to weigh">
          {count}
        </Fold>
      ) : (
        count
      )}
    </div>
  );
}
