'use client';

import Link from 'next/link';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import type { ArrivalProduct } from '@/app/_server/products/arrival-product';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { later } from '@/app/_ui/later/later';
import { LaterPart } from '@/app/_ui/later/later-part';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { Page } from '@/app/_ui/page';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import type { Scan } from '@/app/_ui/scanner/scan';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { useFirstTouch } from '@/app/_ui/use-first-touch';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import type { Booked } from '@/app/(shop)/arrive/_ui/arrival-card';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { BrokenCode } from '@/app/(shop)/arrive/_ui/broken-code';
import { CorrectCode } from '@/app/(shop)/arrive/_ui/correct-code';
import { Done } from '@/app/(shop)/arrive/_ui/done';
import { NotAsked } from '@/app/(shop)/arrive/_ui/not-asked';
import type { PlaceOption } from '@/app/(shop)/arrive/_ui/place-choice';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { useAsk } from '@/app/(shop)/arrive/_ui/use-ask';
import { useOpenCard } from '@/app/(shop)/arrive/_ui/use-open-card';
import { useTopOf } from '@/app/(shop)/arrive/_ui/use-top-of';
import { readArrivalProduct } from '@/app/(shop)/arrive/actions';
import { type Card, newCard, sayCard } from '@/app/(shop)/arrive/card';
import { scanOnCard } from '@/app/(shop)/arrive/scan-on-card';
import { sayScanned } from '@/app/(shop)/scan/say-scanned';

// The scanner is there first; what follows a scan comes with the first touch, before anybody has found the label.
const arrivalCard = later(async () => (await import('@/app/(shop)/arrive/_ui/arrival-card')).ArrivalCard);
const teach = later(async () => (await import('@/app/(shop)/arrive/_ui/teach')).Teach);
// A failure only means that it is fetched when it is wanted.
const fetchAhead = () => void Promise.all([arrivalCard.fetch(), teach.fetch()]).catch(() => undefined);

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
  const filling = useRef(false);
  const fill = useCallback((isFilling: boolean) => {
    filling.current = isFilling;
  }, []);
  const { card, latest, setCard, left, leftOpen, recallLeft, dropLeft } = useOpenCard(sayStart(start));
  const [aside, setAside] = useState<{ scanned: Scanned; scan: Scan }>();
  const [said, setSaid] = useState('');
  const [isScanning, setScanning] = useState(false);
  const [added, setAdded] = useState<readonly PlaceOption[]>([]);
  const [failed, setFailed] = useState<number>();
  const say = useNotice();
  const places = [...given, ...added.filter((place) => !given.some((one) => one.label === place.label))];

  const addPlace = useCallback((place: PlaceOption) => {
    setAdded((before) => (before.some((one) => one.label === place.label) ? before : [...before, place]));
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

  /** Opens the card that was left, with its product as the book has it by now. */
  const goOn = useCallback(
    (before: Card) => {
      setCard(before);
      setSaid('');
      setView({ at: 'card' });
      const { productId } = before.product;
      const renew = (product: ArrivalProduct | undefined) => {
        const open = latest.current;
        if (product && open?.product.productId === productId) setCard({ ...open, product });
      };
      // Without a network the product stays as it was read; the book looks at it again where the card is written.
      readArrivalProduct(productId).then(renew, () => undefined);
    },
    [latest, setCard],
  );

  const take = useCallback(
    (scanned: Scanned, scan: Scan) => {
      const before = latest.current ? undefined : leftOpen.current;
      const open = latest.current ?? before;
      if (open) {
        if (before) goOn(before);
        const outcome = scanOnCard(open, scanned, shop.order);
        // The container of a card that was left is scanned again to go on with it, not to count it twice.
        if (before && outcome.kind === 'changed' && outcome.card.count !== before.count) {
          setAside(undefined);
          return say({ words: `Going on with ${sayCard(before)}.` });
        }
        if (scanned.kind === 'place') addPlace({ label: scanned.label, name: scanned.name, inside: null });
        if (outcome.kind === 'other') {
          giveFeedback('error');
          return setAside({ scanned, scan });
        }
        setAside(undefined);
        say({ words: outcome.said });
        if (outcome.kind === 'refused') return giveFeedback('error');
        return setCard(outcome.card);
      }
      // A form that is being filled in stays: another scan waits beside it.
      if (filling.current) {
        giveFeedback('error');
        return setAside({ scanned, scan });
      }
      setAside(undefined);
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
    [addPlace, begin, goOn, latest, leftOpen, say, setCard, shop.order],
  );

  const { ask, again, drop, asking, unasked, trouble } = useAsk(take);
  useScanHandler(ask);

  useTopOf(view.at === 'card' ? `card ${isScanning} ${aside?.scan.text ?? ''}` : view.at);

  useFirstTouch(fetchAhead);

  const recalled = useRef<'no' | 'same' | 'other'>('no');
  useEffect(() => {
    if (recalled.current === 'no') recalled.current = recallLeft() ? 'same' : 'other';
  }, [recallLeft]);

  const started = useRef(false);
  useEffect(() => {
    if (started.current || !start) return;
    started.current = true;
    if (recalled.current === 'same' && leftOpen.current) return goOn(leftOpen.current);
    if ('scan' in start) return take(start.scanned, start.scan);
    if (!leftOpen.current) return begin(start.product, NOTHING);
    // The card that was left stays until somebody says otherwise.
    const { product } = start;
    take({ kind: 'product', code: '', product, says: NOTHING }, { text: product.name, source: 'typed' });
  }, [start, begin, take, goOn, leftOpen]);

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
      {unasked.length > 0 ? <NotAsked scans={unasked} trouble={trouble} onAgain={again} onDrop={drop} /> : null}
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
            of="card"
            shop={shop}
            onScan={ask}
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
        <LaterPart
          of={arrivalCard}
          kept="What was scanned is kept here. Nothing is in the book yet."
          given={{
            card,
            shop,
            places,
            onChange: (next) => {
              if (next.placeLabel !== card.placeLabel) remember(PLACE, next.placeLabel || undefined);
              setCard(next);
            },
            onPlaceAdded: (place) => {
              addPlace(place);
              remember(PLACE, place.label);
              setCard({ ...(latest.current ?? card), placeLabel: place.label, newPlace: '' });
            },
            onBooked: (booked) => {
              remember(PLACE, latest.current?.placeLabel || undefined);
              setCard(undefined);
              setAside(undefined);
              setSaid('');
              setView({ at: 'done', booked });
            },
            isScanning,
            onScanMore: () => setScanning(!isScanning),
            onLeave: toScan,
          }}
        />
      </Page>
    );
  }
  if (view.at === 'teach') {
    return (
      <Page title={view.code === undefined ? 'Without a code' : 'New to the book'}>
        {heard}
        {aside ? (
          <Aside
            {...aside}
            of="form"
            shop={shop}
            onScan={ask}
            onLeaveCard={() => {
              const { scanned, scan } = aside;
              fill(false);
              toScan();
              take(scanned, scan);
            }}
            onClose={() => setAside(undefined)}
          />
        ) : null}
        <LaterPart
          key={view.code}
          of={teach}
          kept="What was scanned is kept here. Nothing is in the book yet."
          given={{
            code: view.code,
            says: view.says,
            shop,
            places,
            onProduct: async (productId) => {
              fill(false);
              await (view.scan ? ask(view.scan) : fetchProduct(productId));
            },
            onFilling: fill,
            onMeaning: (sentence) => {
              toScan();
              setSaid(sentence);
            },
            onLeave: toScan,
          }}
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
            <>
              <BrokenCode text={view.scan.text} malformed={view.scanned.malformed} />
              {view.scanned.malformed.code === 'too-long' ? null : (
                <div className={styles.correct}>
                  <CorrectCode key={view.scan.text} scan={view.scan} at={view.scanned.malformed.at} onScan={ask} />
                </div>
              )}
            </>
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
          held={booked.held}
          said={`${many ? `${booked.labels.length} are` : 'It is'} in the book${booked.place ? `, ${booked.place}` : ''}.`}
          note={
            many ? 'Stick one on each. Opening one does not age the others.' : 'Write or stick it on the container.'
          }
          page={
            many
              ? { href: `/lots/${booked.lotId}`, words: 'Open their lot' }
              : { href: thingHref(label), words: 'Open its page' }
          }
          print={many ? 'Print their labels' : 'Print its label'}
          next="Next: scan again"
          onNext={toScan}
        />
      </Page>
    );
  }
  return (
    <Page title="Arrive" settings>
      {heard}
      {left ? (
        <div role="status" className={styles.aside}>
          <p>This is not in the book yet. It was kept as you left it.</p>
          <div className={styles.asideKeys}>
            <Key onClick={() => goOn(left)}>Go on with {sayCard(left)}</Key>
            <Key variant="ghost" onClick={dropLeft}>
              Leave it
            </Key>
          </div>
        </div>
      ) : null}
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

/** What began the page, so that the same page opened again is known. */
function sayStart(start: ArriveFlowProps['start']): string {
  if (!start) return '';
  return 'product' in start ? `product ${start.product.productId}` : `${start.scan.symbology ?? ''} ${start.scan.text}`;
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
        It really is printed like that: teach it
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

/** A scan that is none of the business of the open card or form, beside it; both stay as they are. */
function Aside({
  of,
  scanned,
  scan,
  shop,
  onScan,
  onLot,
  onLeaveCard,
  onClose,
}: {
  of: 'card' | 'form';
  scanned: Scanned;
  scan: Scan;
  shop: ShopFacts;
  onScan: (scan: Scan) => void;
  onLot?: () => void;
  onLeaveCard: () => void;
  onClose: () => void;
}) {
  const { title, lines } = sayScanned(scanned, shop.prefer);
  const href = scanned.kind === 'container' || scanned.kind === 'piece' ? thingHref(scanned.label) : undefined;
  return (
    <div role="alert" className={styles.aside}>
      <p>
        You scanned something else: <b>{title}</b>. This {of} is as it was.
      </p>
      {scanned.kind === 'unknown' && scanned.malformed ? (
        <BrokenCode text={scan.text} malformed={scanned.malformed} />
      ) : (
        lines.map((line) => <p key={line}>{line}</p>)
      )}
      {scanned.kind === 'unknown' && !scanned.malformed ? <p className={styles.code}>{scanned.code}</p> : null}
      <div className={styles.asideKeys}>
        {scanned.kind === 'unknown' && scanned.malformed && scanned.malformed.code !== 'too-long' ? (
          <CorrectCode key={scan.text} scan={scan} at={scanned.malformed.at} onScan={onScan} />
        ) : null}
        {onLot ? (
          <Key variant="ghost" onClick={onLot}>
            It is the lot number
          </Key>
        ) : null}
        {href ? (
          <Link href={href}>Open its page</Link>
        ) : scanned.kind === 'not-in-book' || (scanned.kind === 'unknown' && scanned.malformed) ? null : (
          <Key variant="ghost" onClick={onLeaveCard}>
            Leave this {of}, take the new scan
          </Key>
        )}
        <Key variant="ghost" onClick={onClose}>
          Go on with this {of}
        </Key>
      </div>
    </div>
  );
}
