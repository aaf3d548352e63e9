'use client';

import dynamic from 'next/dynamic';
import Link from 'next/link';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import type { ArrivalProduct } from '@/app/_server/products/arrival-product';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { Page } from '@/app/_ui/page';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { Scan } from '@/app/_ui/scanner/scan';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import { sayScanned } from '@/app/(shop)/scan/say-scanned';
import { readArrivalProduct } from '../actions';
import { type Card, newCard } from '../card';
import { scanOnCard } from '../scan-on-card';
import type { Booked } from './arrival-card';
import styles from './arrive.module.css';
import { BrokenCode } from './broken-code';
import { Done } from './done';
import { NotAsked } from './not-asked';
import type { PlaceOption } from './place-choice';
import type { ShopFacts } from './shop-facts';
import { useAsk } from './use-ask';
import { useTopOf } from './use-top-of';

// The scanner is there first; what follows a scan comes right after it, before anybody has found the label.
const fetchCard = () => import('./arrival-card').then((part) => part.ArrivalCard);
const fetchTeach = () => import('./teach').then((part) => part.Teach);
const loading = () => (
  <p role="status" className={styles.waiting}>
    Getting ready…
  </p>
);
const ArrivalCard = dynamic(fetchCard, { loading });
const Teach = dynamic(fetchTeach, { loading });

const PLACE = 'arrive-place';
const NOTHING: LabelSays = { dates: {}, measures: [] };

type View =
  | { at: 'scan' }
  | { at: 'card' }
  | { at: 'teach'; scan: Scan | undefined; code: string | undefined; says: LabelSays | undefined }
  | { at: 'known'; scanned: Scanned; scan: Scan }
  | { at: 'done'; booked: Booked };

export interface ArriveFlowProps {
  shop: ShopFacts;
  places: readonly PlaceOption[];
  /** What another page sent here: a scan with its answer, or a product without one. */
  start?: { scan: Scan; scanned: Scanned } | { product: ArrivalProduct };
}

/** Arrive: scan, see how it stands, put it into the book, print its labels, next. */
export function ArriveFlow({ shop, places: given, start }: ArriveFlowProps) {
  const [view, setView] = useState<View>({ at: 'scan' });
  const [card, setCardState] = useState<Card>();
  const [aside, setAside] = useState<{ scanned: Scanned; scan: Scan }>();
  const [said, setSaid] = useState('');
  const [isScanning, setScanning] = useState(false);
  const [added, setAdded] = useState<readonly PlaceOption[]>([]);
  const [failed, setFailed] = useState<number>();
  const say = useNotice();
  const places = [...given, ...added.filter((place) => !given.some((one) => one.label === place.label))];
  // Scans come in while the screen is being drawn, so the card they meet is kept beside it.
  const latest = useRef<Card>(undefined);
  const setCard = useCallback((next: Card | undefined) => {
    latest.current = next;
    setCardState(next);
  }, []);

  const begin = useCallback(
    (product: ArrivalProduct, says: LabelSays) => {
      const remembered = recall(PLACE) ?? '';
      const placeLabel = given.some((place) => place.label === remembered) ? remembered : '';
      setCard(newCard(product, says, { ...shop, placeLabel }));
      setAside(undefined);
      setSaid('');
      setScanning(false);
      setView({ at: 'card' });
    },
    [given, setCard, shop],
  );

  const take = useCallback(
    (scanned: Scanned, scan: Scan) => {
      const open = latest.current;
      if (open) {
        const outcome = scanOnCard(open, scanned);
        if (outcome.kind === 'other') {
          giveFeedback('error');
          return setAside({ scanned, scan });
        }
        setAside(undefined);
        say({ words: outcome.said });
        if (outcome.kind === 'refused') return giveFeedback('error');
        return setCard(outcome.card);
      }
      setSaid('');
      if (scanned.kind === 'product') return begin(scanned.product, scanned.says);
      if (scanned.kind === 'unknown-product') {
        return setView({ at: 'teach', scan, code: scanned.code, says: scanned.says });
      }
      if (scanned.kind === 'unknown' && !scanned.malformed) {
        return setView({ at: 'teach', scan, code: scanned.code, says: undefined });
      }
      if (scanned.kind === 'place') {
        remember(PLACE, scanned.label);
        setSaid(`What comes in next goes to ${scanned.name}.`);
        return setView({ at: 'scan' });
      }
      giveFeedback('error');
      setView({ at: 'known', scanned, scan });
    },
    [begin, say, setCard],
  );

  const { ask, again, drop, asking, unasked } = useAsk(take);
  useScanHandler(ask);

  useTopOf(view.at === 'card' ? `card ${isScanning} ${aside?.scan.text ?? ''}` : view.at);

  useEffect(() => {
    // While there is a network; a failure only means that it is fetched when it is wanted.
    const timer = setTimeout(() => Promise.all([fetchCard(), fetchTeach()]).catch(() => undefined), 500);
    return () => clearTimeout(timer);
  }, []);

  const started = useRef(false);
  useEffect(() => {
    if (started.current || !start) return;
    started.current = true;
    if ('product' in start) begin(start.product, NOTHING);
    else take(start.scanned, start.scan);
  }, [start, begin, take]);

  const toScan = () => {
    setCard(undefined);
    setAside(undefined);
    setSaid('');
    setView({ at: 'scan' });
  };

  async function fetchProduct(productId: number) {
    setFailed(undefined);
    try {
      const product = await readArrivalProduct(productId);
      if (product) begin(product, NOTHING);
    } catch {
      setFailed(productId);
    }
  }

  const heard = (
    <>
      <p role="status" className={styles.said}>
        {asking ? 'Asking the book…' : said}
      </p>
      {unasked.length > 0 ? <NotAsked scans={unasked} onAgain={again} onDrop={drop} /> : null}
      {failed === undefined ? null : (
        <NotAsked
          scans={[{ text: 'the product', source: 'typed' }]}
          onAgain={() => fetchProduct(failed)}
          onDrop={() => setFailed(undefined)}
        />
      )}
    </>
  );

  if (view.at === 'card' && card) {
    return (
      <Page title={card.product.name} context="Just came in">
        {heard}
        {aside ? (
          <Aside
            {...aside}
            shop={shop}
            onLot={
              aside.scanned.kind === 'unknown' && aside.scan.text.trim().length <= 40 && !card.lot.trim()
                ? () => {
                    setCard({ ...card, lot: aside.scan.text.trim() });
                    setAside(undefined);
                  }
                : undefined
            }
            onLeaveCard={() => {
              const { scanned, scan } = aside;
              toScan();
              take(scanned, scan);
            }}
            onClose={() => setAside(undefined)}
          />
        ) : null}
        {isScanning ? <Scanner onScan={ask} prompt="Scan its lot, one more of it, or where it goes." compact /> : null}
        <ArrivalCard
          card={card}
          shop={shop}
          places={places}
          onChange={(next) => {
            if (next.placeLabel !== card.placeLabel) remember(PLACE, next.placeLabel || undefined);
            setCard(next);
          }}
          onPlaceAdded={(place) => {
            setAdded((before) => [...before, place]);
            remember(PLACE, place.label);
            setCard({ ...(latest.current ?? card), placeLabel: place.label });
          }}
          onBooked={(booked) => {
            remember(PLACE, card.placeLabel || undefined);
            setCard(undefined);
            setAside(undefined);
            setSaid('');
            setView({ at: 'done', booked });
          }}
          isScanning={isScanning}
          onScanMore={() => setScanning(!isScanning)}
          onLeave={toScan}
        />
      </Page>
    );
  }
  if (view.at === 'teach') {
    return (
      <Page title={view.code === undefined ? 'Without a code' : 'New to the book'}>
        {heard}
        <Teach
          key={view.code}
          code={view.code}
          says={view.says}
          shop={shop}
          places={places}
          onProduct={async (productId) => (view.scan ? ask(view.scan) : fetchProduct(productId))}
          onMeaning={(sentence) => {
            toScan();
            setSaid(sentence);
          }}
          onLeave={toScan}
        />
      </Page>
    );
  }
  if (view.at === 'known') {
    const { title, lines } = sayScanned(view.scanned, shop.prefer);
    return (
      <Page title={title}>
        {heard}
        <div style={{ flex: 1 }}>
          {lines.map((line) => (
            <p key={line} className={styles.plain}>
              {line}
            </p>
          ))}
          {view.scanned.kind === 'unknown' && view.scanned.malformed ? (
            <BrokenCode text={view.scan.text} malformed={view.scanned.malformed} />
          ) : null}
        </div>
        <KeyBar>
          <Key onClick={toScan}>Scan again</Key>
          <KnownKeys
            scanned={view.scanned}
            onTeach={(code) => setView({ at: 'teach', scan: view.scan, code, says: undefined })}
          />
        </KeyBar>
      </Page>
    );
  }
  if (view.at === 'done') {
    const { booked } = view;
    const [label = ''] = booked.labels;
    const many = booked.labels.length > 1;
    return (
      <Page title={booked.title}>
        {heard}
        <Done
          labels={booked.labels}
          entryId={booked.entryId}
          said={`${many ? `${booked.labels.length} are` : 'It is'} in the book${booked.place ? `, ${booked.place}` : ''}.`}
          note={
            many ? 'Stick one on each. Opening one does not age the others.' : 'Write or stick it on the container.'
          }
          page={
            many
              ? { href: `/lots/${booked.lotId}`, words: 'Open their lot' }
              : { href: thingHref(label), words: 'Open its page' }
          }
          print={many ? `Print ${booked.labels.length} labels` : 'Print its label'}
          next="Next: scan again"
          onNext={toScan}
        />
      </Page>
    );
  }
  return (
    <Page title="Arrive" settings>
      {heard}
      <Scanner onScan={ask} prompt="Scan what came through the door." />
      <div className={styles.ways}>
        <Key
          variant="ghost"
          onClick={() => setView({ at: 'teach', scan: undefined, code: undefined, says: undefined })}
        >
          It has no code
        </Key>
        <LinkKey variant="ghost" href="/arrive/wood">
          Wood came in
        </LinkKey>
        <LinkKey variant="ghost" href="/arrive/move">
          Move things
        </LinkKey>
      </div>
    </Page>
  );
}

/** Keys for what is in the book already, or nearly reads. */
function KnownKeys({ scanned, onTeach }: { scanned: Scanned; onTeach: (code: string) => void }) {
  if (scanned.kind === 'container' || scanned.kind === 'piece') {
    return (
      <>
        <LinkKey variant="ghost" href={thingHref(scanned.label)}>
          Open its page
        </LinkKey>
        <LinkKey variant="ghost" href={`/arrive/move?things=${scanned.label}`}>
          Move it
        </LinkKey>
      </>
    );
  }
  if (scanned.kind === 'unknown' && scanned.malformed && canBeTaught(scanned)) {
    return (
      <Key variant="ghost" onClick={() => onTeach(scanned.code)}>
        It is printed so: teach it
      </Key>
    );
  }
  return null;
}

/** A maker may print a code wrongly, and it can still be taught as it stands; one of our own labels cannot be misprinted. */
function canBeTaught(scanned: Extract<Scanned, { kind: 'unknown' }>): boolean {
  const { malformed, code } = scanned;
  return code !== '' && malformed?.looksLike !== 'own' && malformed?.code !== 'too-long';
}

/** A scan that is none of the open card's business, beside it; the card stays as it is. */
function Aside({
  scanned,
  scan,
  shop,
  onLot,
  onLeaveCard,
  onClose,
}: {
  scanned: Scanned;
  scan: Scan;
  shop: ShopFacts;
  onLot?: () => void;
  onLeaveCard: () => void;
  onClose: () => void;
}) {
  const { title, lines } = sayScanned(scanned, shop.prefer);
  const href = scanned.kind === 'container' || scanned.kind === 'piece' ? thingHref(scanned.label) : undefined;
  return (
    <div role="alert" className={styles.aside}>
      <p>
        You scanned something else: <b>{title}</b>. This card is as it was.
      </p>
      {scanned.kind === 'unknown' && scanned.malformed ? (
        <BrokenCode text={scan.text} malformed={scanned.malformed} />
      ) : (
        lines.map((line) => <p key={line}>{line}</p>)
      )}
      {scanned.kind === 'unknown' && !scanned.malformed ? <p className={styles.code}>{scanned.code}</p> : null}
      <div className={styles.asideKeys}>
        {onLot ? (
          <Key variant="ghost" onClick={onLot}>
            It is the lot number
          </Key>
        ) : null}
        {href ? (
          <Link href={href}>Open its page</Link>
        ) : scanned.kind === 'not-in-book' || (scanned.kind === 'unknown' && scanned.malformed) ? null : (
          <Key variant="ghost" onClick={onLeaveCard}>
            Leave this card for it
          </Key>
        )}
        <Key variant="ghost" onClick={onClose}>
          Go on with this card
        </Key>
      </div>
    </div>
  );
}
