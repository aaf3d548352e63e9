'use client';

import { useCallback, useEffect, useState } from 'react';
import { Key } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { Done } from '@/app/(shop)/arrive/_ui/done';
import type { PlaceOption } from '@/app/(shop)/arrive/_ui/place-choice';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { useTopOf } from '@/app/(shop)/arrive/_ui/use-top-of';
import { isTyped, keepWood, recallWood, type WoodDraft } from '@/app/(shop)/arrive/wood/_ui/wood-draft';
import { WoodForm } from '@/app/(shop)/arrive/wood/_ui/wood-form';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { NO_TALLY } from '@/app/(shop)/arrive/wood/tally';

/** What the form begins with, and what it would begin with had nobody typed in it before. */
type Begun = { nr: number; wood: TypedWood; begun: TypedWood; newPlace: string };
type Booked = { entryId: number; labels: string[]; wood: TypedWood };

function freshWood(placeLabel: string): TypedWood {
  return {
    form: 'slab',
    species: '',
    count: '1',
    length: '',
    widths: 'three',
    width: '',
    widthStart: '',
    widthMiddle: '',
    widthEnd: '',
    thickness: '',
    flags: ['live-edge-left', 'live-edge-right'],
    flitch: '',
    flitchNumber: '',
    cost: '',
    receivedOn: '',
    placeLabel,
    note: '',
    origin: '',
    sapwood: '',
    quarters: '',
    surfacing: '',
    grain: '',
    faceA: '',
    faceB: '',
    tally: NO_TALLY,
    moisture: '',
    meter: '',
    spot: '',
  };
}

/** What the next piece of the same load has in common with the last one. */
function nextOf({ wood, labels }: Booked): TypedWood {
  const { form, species, widths, thickness, flitch, flitchNumber, placeLabel, meter, flags } = wood;
  const { origin, quarters, surfacing, grain, faceA, faceB } = wood;
  const live = flags.filter((flag) => flag.startsWith('live-edge'));
  const number = flitchNumber.trim() === '' ? '' : String(Number(flitchNumber) + labels.length);
  return {
    ...freshWood(placeLabel),
    form,
    species,
    widths,
    thickness,
    flitch,
    flitchNumber: number,
    meter,
    origin,
    quarters,
    surfacing,
    grain,
    faceA,
    faceB,
    tally: { ...NO_TALLY, as: wood.tally.as, sellerName: wood.tally.sellerName },
    flags: live,
  };
}

/** Wood comes in one size at a time; the next one starts from what the last one had in common with it. */
export function WoodFlow({
  shop,
  places,
  species,
}: {
  shop: ShopFacts;
  places: readonly PlaceOption[];
  species: readonly string[];
}) {
  const [added, setAdded] = useState<readonly PlaceOption[]>([]);
  const [booked, setBooked] = useState<Booked>();
  const [first, setFirst] = useState<Begun>({ nr: 0, wood: freshWood(''), begun: freshWood(''), newPlace: '' });
  const [kept, setKept] = useState<WoodDraft>();
  const all = [...places, ...added.filter((place) => !places.some((one) => one.label === place.label))];

  useTopOf(booked ? 'done' : 'form');

  useEffect(() => {
    const draft = recallWood();
    if (!draft) return;
    setKept(draft);
    setFirst(({ nr, begun }) => ({ nr: nr + 1, wood: draft.wood, begun, newPlace: draft.newPlace }));
  }, []);

  const { begun } = first;
  const keep = useCallback((draft: WoodDraft) => keepWood(isTyped(draft, begun) ? draft : undefined), [begun]);

  if (booked) {
    const { wood, labels } = booked;
    const place = all.find((one) => one.label === wood.placeLabel)?.name;
    const many = labels.length > 1;
    const thing = wood.form === 'pack' ? (wood.tally.as === 'singly' ? 'board' : 'pack') : wood.form;
    return (
      <Page title={`${wood.species.trim()} ${thing}${many ? 's' : ''}`} back={{ href: '/arrive', words: 'Arrive' }}>
        <Done
          labels={labels}
          entryId={booked.entryId}
          said={`${many ? `${labels.length} are` : 'It is'} in the book${place ? `, ${place}` : ''}.`}
          note={
            wood.form === 'slab'
              ? 'Each slab gets two labels, one for each end, so that one may be lost with a cut. Lift heavy slabs with help.'
              : undefined
          }
          page={
            many
              ? { href: '/on-hand?show=wood', words: 'See the wood on hand' }
              : { href: `/pieces/${labels[0]}`, words: 'Open its page' }
          }
          print={many ? 'Print their labels' : wood.form === 'slab' ? 'Print both its labels' : 'Print its label'}
          next={`Next ${wood.form}`}
          onNext={() => {
            const next = nextOf(booked);
            setFirst({ nr: first.nr + 1, wood: next, begun: next, newPlace: '' });
            setBooked(undefined);
          }}
        />
      </Page>
    );
  }
  return (
    <Page title="Wood came in" back={{ href: '/arrive', words: 'Arrive' }}>
      {kept ? (
        <div role="status" className={styles.aside}>
          <p>
            What you typed here before is kept.
            {kept.hadPhoto ? ' Only the photo has to be chosen again.' : ''}
          </p>
          <div className={styles.asideKeys}>
            <Key
              variant="ghost"
              onClick={() => {
                keepWood(undefined);
                setKept(undefined);
                setFirst({ nr: 0, wood: freshWood(''), begun: freshWood(''), newPlace: '' });
              }}
            >
              Begin afresh
            </Key>
          </div>
        </div>
      ) : null}
      <WoodForm
        key={first.nr}
        first={first.wood}
        newPlace={first.newPlace}
        remembers={first.nr === 0}
        shop={shop}
        places={all}
        species={species}
        onPlaceAdded={(place) =>
          setAdded((before) => (before.some((one) => one.label === place.label) ? before : [...before, place]))
        }
        onTyped={keep}
        onBooked={(next) => {
          keepWood(undefined);
          setKept(undefined);
          setBooked(next);
        }}
      />
    </Page>
  );
}
