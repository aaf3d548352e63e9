'use client';

import { type FormEvent, useEffect, useMemo, useRef } from 'react';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { NumberStep } from '@/app/_ui/field/number-step';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { ArrivalReasons, ArrivalVerdict } from '@/app/(shop)/arrive/_ui/arrival-verdict';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { ConfirmDates } from '@/app/(shop)/arrive/_ui/confirm-dates';
import { LabelDates } from '@/app/(shop)/arrive/_ui/label-dates';
import { OpenedAlready } from '@/app/(shop)/arrive/_ui/opened-already';
import { PlaceChoice, type PlaceOption, sayWhere } from '@/app/(shop)/arrive/_ui/place-choice';
import { readSize } from '@/app/(shop)/arrive/_ui/read-size';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { useNewPlace } from '@/app/(shop)/arrive/_ui/use-new-place';
import { bookArrival } from '@/app/(shop)/arrive/actions';
import { type Card, hasDate } from '@/app/(shop)/arrive/card';
import { judgeCard, knownLotOf, openingOn } from '@/app/(shop)/arrive/judge-card';
import { sayHeldLot } from '@/app/(shop)/arrive/say-held-lot';
import type { TypedArrival } from '@/app/(shop)/arrive/schema';
import { Safety } from '@/app/(shop)/pull/_ui/safety';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';

export type Booked = {
  entryId: number;
  lotId: number;
  labels: string[];
  title: string;
  place: string | null;
  /** That its lot is held, and what that means. */
  held: readonly [string, string] | undefined;
};

export function ArrivalCard({
  card,
  shop,
  places,
  onChange,
  onPlaceAdded,
  onBooked,
  isScanning,
  onScanMore,
  onLeave,
}: {
  card: Card;
  shop: ShopFacts;
  places: readonly PlaceOption[];
  onChange: (card: Card) => void;
  onPlaceAdded: (place: PlaceOption) => void;
  onBooked: (booked: Booked) => void;
  isScanning: boolean;
  onScanMore: () => void;
  onLeave: () => void;
}) {
  const { product } = card;
  const verdict = useMemo(() => judgeCard(card, shop), [card, shop]);
  const known = knownLotOf(card);
  const about = {
    today: shop.today,
    order: shop.order,
    materialKind: product.kind,
    prefer: shop.prefer,
    // A card that was kept on the device may be of a time when no reason was read with the lot.
    ...(known && { lot: { code: known.code, hold: known.facts.hold, because: known.heldBecause ?? '' } }),
  };
  const { run, pending, problem } = useAct(bookArrival, { keepAs: 'arrive' });
  const errors = useFieldErrors(problem, { ...card, ...card.dates, opened: card.openedOn });
  const newPlace = useNewPlace(card.newPlace, 'shelf');
  const form = useRef<HTMLFormElement>(null);
  useShowTrouble(form, problem);
  useShowTrouble(form, newPlace.problem);
  const counted = product.unit === 'piece' ? { one: 'box', many: 'boxes' } : { one: 'container', many: 'containers' };
  const set =
    <K extends keyof Card>(name: K) =>
    (value: Card[K]) =>
      onChange({ ...card, [name]: value });

  const heard = useRef<string>(undefined);
  useEffect(() => {
    if (heard.current !== verdict.word) giveFeedback(verdict.word);
    heard.current = verdict.word;
  }, [verdict.word]);

  async function book(event: FormEvent) {
    event.preventDefault();
    // The place comes first: where it is refused, nothing is booked.
    const added = card.newPlace.trim() ? await newPlace.add() : undefined;
    if (card.newPlace.trim() && !added) return giveFeedback('error');
    if (added) onPlaceAdded(added);
    const placeLabel = added?.label ?? card.placeLabel;
    const answer = await run(typedArrival({ ...card, placeLabel }));
    if (!answer.ok) return giveFeedback('error');
    const { entryId, lotId, containers, lotHold, heldBecause } = answer.answer;
    // The lot may have been put on hold since the card was opened.
    const held = sayHeldLot({ code: card.lot.trim(), hold: lotHold, because: heldBecause });
    if (held) giveFeedback('stop');
    onBooked({
      held,
      entryId,
      lotId,
      labels: containers.map((one) => one.label),
      title: product.name,
      place: (added ?? places.find((one) => one.label === placeLabel))?.name ?? null,
    });
  }

  return (
    <form ref={form} onSubmit={book} noValidate style={{ display: 'contents' }}>
      <ArrivalVerdict verdict={verdict} about={about} />
      <div className={styles.columns}>
        <div>
          <Section title="From the label">
            {product.maker ? <p className={styles.maker}>{product.maker}</p> : null}
            <ConfirmDates card={card} onChange={onChange} />
            <TextField
              label="Lot"
              optional
              code
              hint={card.lot.trim() ? undefined : 'No lot printed? Then it stays empty.'}
              value={card.lot}
              onChange={set('lot')}
              error={errors.lot}
              autoCapitalize="characters"
              spellCheck={false}
            />
            {known ? <KnownLot lot={known.code} dates={known.facts} order={shop.order} /> : null}
            <LabelDates card={card} shop={shop} onChange={onChange} errors={errors} />
            {product.policy.kind !== 'keeps' && !hasDate(card) && !known ? (
              <p className={styles.note}>It may come in without a date, and then it waits for an inspection.</p>
            ) : null}
            <ArrivalReasons verdict={verdict} about={about} openedOn={openingOn(card, shop)?.on} />
          </Section>
        </div>
        <div>
          <Section title="Into the book">
            <NumberStep
              label="How many"
              hint="Scanning the same one again adds one."
              min={1}
              max={MOST_AT_ONCE}
              unit={counted}
              value={card.count}
              onChange={set('count')}
              error={errors.count}
            />
            <PlaceChoice
              places={places}
              where={card}
              onChange={(where) => onChange({ ...card, ...where })}
              adding={newPlace}
              error={errors.placeLabel}
            />
            <QuantityField
              label="One holds, when full"
              value={card.size}
              onChange={set('size')}
              read={(text) => readSize(text, product.unit, shop.prefer)}
              error={errors.size}
            />
            <TextField
              label={`Cost of one, ${shop.currency}`}
              optional
              inputMode="decimal"
              value={card.cost}
              onChange={set('cost')}
              error={errors.cost}
            />
          </Section>
          <OpenedAlready card={card} shop={shop} onChange={onChange} errors={errors} />
          <Fold
            title="Quarantine"
            now={card.quarantine ? 'yes, until it is released' : 'no'}
            open={verdict.reasons[0]?.code === 'past-limit' || verdict.reasons[0]?.code === 'recalled' || undefined}
          >
            <ChoiceChips
              label="Keep it apart in quarantine?"
              hint="In quarantine nothing of it goes in a job until it is released, with a reason."
              options={[
                { value: 'no', label: 'No' },
                { value: 'yes', label: 'Yes, quarantine' },
              ]}
              value={card.quarantine ? 'yes' : 'no'}
              onChange={(value) => onChange({ ...card, quarantine: value === 'yes' })}
            />
          </Fold>
          <Fold
            title="When, and on which delivery note"
            now={card.receivedOn === sayDate(shop.today, { order: shop.order }) ? 'today' : card.receivedOn}
          >
            <DateTextField
              label="Arrived on"
              today={shop.today}
              order={shop.order}
              aim="past"
              value={card.receivedOn}
              onChange={set('receivedOn')}
              error={errors.receivedOn}
            />
            <TextField
              label="Delivery note or order"
              optional
              value={card.reference}
              onChange={set('reference')}
              error={errors.reference}
            />
          </Fold>
          <Safety kind={product.kind} hazards={product.hazards} safetySheet={product.safetySheet} />
        </div>
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.leave}>
        <Key variant="ghost" onClick={onLeave}>
          Leave this card
        </Key>
      </div>
      <KeyBar>
        <Key type="submit" pending={pending || newPlace.pending} pendingWords="Writing into the book…">
          {sayInto(card, sayWhere(card, places))}
        </Key>
        <Key variant="ghost" onClick={onScanMore}>
          {isScanning ? 'Close scanner' : 'Scan more'}
        </Key>
      </KeyBar>
    </form>
  );
}

function sayInto(card: Card, place: string | undefined): string {
  const count = Number(card.count);
  const many = count > 1 ? `${count} into the book` : 'Into the book';
  const apart = card.quarantine ? ', in quarantine' : '';
  return place ? `${many}, ${place}${apart}` : `${many}${apart || ', no place yet'}`;
}

function KnownLot({
  lot,
  dates,
  order,
}: {
  lot: string;
  dates: NonNullable<ReturnType<typeof knownLotOf>>['facts'];
  order: DateOrder;
}) {
  const said = [
    dates.useBy && `use by ${sayDate(dates.useBy.date, { ...dates.useBy, order })}`,
    dates.bestBefore && `best before ${sayDate(dates.bestBefore.date, { ...dates.bestBefore, order })}`,
    dates.madeOn && `made on ${sayDate(dates.madeOn.date, { ...dates.madeOn, order })}`,
  ].filter(Boolean);
  return (
    <p className={styles.plain}>
      Lot {lot} is in the book already{said.length ? `, ${said.join(', ')}` : ', without a date'}.
    </p>
  );
}

/** What goes to the server: the fields as they were typed, to be read again there. */
function typedArrival(card: Card): TypedArrival {
  const { product, serials: _, newPlace: __, dates, conditions, ...fields } = card;
  const date = (name: keyof typeof dates) => ({ text: dates[name].text, confirmed: dates[name].confirmed });
  return {
    ...fields,
    conditions: [...conditions],
    productId: product.productId,
    unit: product.unit,
    dates: { useBy: date('useBy'), bestBefore: date('bestBefore'), madeOn: date('madeOn') },
  };
}
