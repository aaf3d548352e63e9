'use client';

import { type FormEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import type { Echo } from '@/app/_ui/field/field-shell';
import { NumberStep } from '@/app/_ui/field/number-step';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PieceDrawing } from '@/app/_ui/piece-drawing';
import { PlainError } from '@/app/_ui/plain-error';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { Section } from '@/app/_ui/section';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import { pieceMarks, sayPiece } from '@/app/(shop)/_parts/stock/say-piece';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { NotAsked } from '@/app/(shop)/arrive/_ui/not-asked';
import { PlaceChoice, type PlaceOption, sayWhere } from '@/app/(shop)/arrive/_ui/place-choice';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { useAsk } from '@/app/(shop)/arrive/_ui/use-ask';
import { useNewPlace } from '@/app/(shop)/arrive/_ui/use-new-place';
import { OriginFold } from '@/app/(shop)/arrive/wood/_ui/origin-fold';
import { PhotoField } from '@/app/(shop)/arrive/wood/_ui/photo-field';
import { SellerFields } from '@/app/(shop)/arrive/wood/_ui/seller-fields';
import { SoldFields } from '@/app/(shop)/arrive/wood/_ui/sold-fields';
import { TallyFields } from '@/app/(shop)/arrive/wood/_ui/tally-fields';
import { useSpecies } from '@/app/(shop)/arrive/wood/_ui/use-species';
import type { WoodDraft } from '@/app/(shop)/arrive/wood/_ui/wood-draft';
import { bookWood } from '@/app/(shop)/arrive/wood/actions';
import { ofAnotherWood } from '@/app/(shop)/arrive/wood/of-another-wood';
import { saySheets } from '@/app/(shop)/arrive/wood/say-sheets';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { quartersTyped } from '@/app/(shop)/arrive/wood/sold-thickness';
import { withForm } from '@/app/(shop)/arrive/wood/with-form';
import { judgeWood, typedPiece } from '@/app/(shop)/arrive/wood/wood-shape';
import { sayDate } from '@/shared/calendar/say-date';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { parseLength } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import { PIECE_FLAGS, PIECE_FORMS, type PieceFlag } from '@/shared/wood/piece';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';

const WOOD_PLACE = 'wood-place';
const METER = 'moisture-meter';

const FORM_WORDS = { slab: 'Slab', board: 'Board', pack: 'Pack of boards', sheet: 'Sheet', offcut: 'Offcut' };
const FLAG_WORDS: Record<PieceFlag, string> = {
  broken: 'Broken',
  strapped: 'Strapped',
  checked: 'Checked',
  twisted: 'Twisted',
  'live-edge-left': 'Live edge left',
  'live-edge-right': 'Live edge right',
};

/** One size of wood, drawn as it is typed and judged as it stands at the door. */
export function WoodForm({
  first,
  newPlace: firstPlace,
  remembers,
  shop,
  places,
  species,
  onPlaceAdded,
  onTyped,
  onBooked,
}: {
  first: TypedWood;
  /** The name of a place that is not in the book yet. */
  newPlace: string;
  /** Whether the place this device used last is taken over. */
  remembers: boolean;
  shop: ShopFacts;
  places: readonly PlaceOption[];
  species: readonly string[];
  onPlaceAdded: (place: PlaceOption) => void;
  /** Hears everything that is typed, to keep it. */
  onTyped: (typed: WoodDraft) => void;
  onBooked: (booked: { entryId: number; labels: string[]; wood: TypedWood }) => void;
}) {
  const [wood, setWood] = useState<TypedWood>(first);
  const [photo, setPhoto] = useState<File>();
  const [said, setSaid] = useState('');
  const [newPlace, setNewPlace] = useState(firstPlace);
  const { run, pending, problem } = useAct(bookWood, { keepAs: 'arrive-wood' });
  const adding = useNewPlace(newPlace, 'rack');
  const errors = useFieldErrors(problem, { ...wood, photo });
  const form = useRef<HTMLFormElement>(null);
  useShowTrouble(form, problem);
  useShowTrouble(form, adding.problem);
  const speciesId = useId();
  const offered = useSpecies(wood.species, species);
  const set =
    <K extends keyof TypedWood>(name: K) =>
    (value: TypedWood[K]) =>
      setWood((now) => ({ ...now, [name]: value }));

  // Once, when the form opens: later choices are the person's own.
  const isOpened = useRef(false);
  useEffect(() => {
    if (isOpened.current || !remembers) return;
    isOpened.current = true;
    const label = recall(WOOD_PLACE) ?? '';
    const meter = recall(METER) ?? '';
    setWood((now) => ({
      ...now,
      meter: now.meter || meter,
      placeLabel: now.placeLabel || (places.some((place) => place.label === label) ? label : ''),
    }));
  }, [remembers, places]);

  const { ask, again, drop, unasked } = useAsk((scanned) => {
    if (scanned.kind !== 'place') {
      giveFeedback('error');
      return setSaid('Here only the label of a place is taken: it says where the wood goes.');
    }
    setSaid(`It goes to ${scanned.name}.`);
    onPlaceAdded({ label: scanned.label, name: scanned.name, inside: null });
    setNewPlace('');
    setWood((now) => ({ ...now, placeLabel: scanned.label }));
  });
  useScanHandler(ask);

  useEffect(() => {
    if (wood !== first || newPlace !== firstPlace || photo) onTyped({ wood, newPlace, hadPhoto: photo !== undefined });
  }, [wood, newPlace, photo, first, firstPlace, onTyped]);

  const piece = typedPiece(wood, shop);
  const drawn = piece && sayPiece(piece, shop.prefer);
  const verdict = useMemo(() => judgeWood(wood, shop), [wood, shop]);
  const [worst, ...others] = verdict.reasons;
  // An empty form is no wood yet: it is judged once there is something of it.
  const isPack = wood.form === 'pack';
  const isBegun = piece !== undefined || wood.moisture.trim() !== '' || (isPack && wood.tally.lines.length > 0);
  const heard = useRef(verdict.word);
  useEffect(() => {
    if (heard.current !== verdict.word) giveFeedback(verdict.word);
    heard.current = verdict.word;
  }, [verdict.word]);

  const length =
    (mode: 'length' | 'thickness' = 'length') =>
    (text: string): Echo => {
      const read = parseLength(text, { prefer: shop.prefer, mode });
      if (!read.ok) return { ok: false, says: sayLengthError(read.error, shop) };
      const own = printLength(read.value, { prefer: shop.prefer, denominator: 64 });
      const other = printLength(read.value, { prefer: shop.prefer === 'metric' ? 'imperial' : 'metric' });
      return { ok: true, says: `${own}, that is ${other}.` };
    };
  const measure = (
    name: 'length' | 'width' | 'widthStart' | 'widthMiddle' | 'widthEnd' | 'thickness' | 'sapwood',
    label: string,
    hint?: string,
  ) => (
    <QuantityField
      label={label}
      hint={hint}
      value={wood[name]}
      onChange={(text) => {
        const quarters = name === 'thickness' ? quartersTyped(text) : undefined;
        setWood((now) => ({ ...now, [name]: text, quarters: quarters ?? now.quarters }));
      }}
      read={length(name === 'thickness' ? 'thickness' : 'length')}
      error={errors[name] ?? errors[`${name}Nm`]}
    />
  );

  async function book(event: FormEvent) {
    event.preventDefault();
    // The place comes first: where it is refused, nothing is booked.
    const added = newPlace.trim() ? await adding.add() : undefined;
    if (newPlace.trim() && !added) return giveFeedback('error');
    const placed = added ? { ...wood, placeLabel: added.label } : wood;
    if (added) {
      onPlaceAdded(added);
      setWood(placed);
      setNewPlace('');
    }
    const answer = await run({ ...placed, photo });
    if (!answer.ok) return giveFeedback('error');
    remember(WOOD_PLACE, placed.placeLabel || undefined);
    if (wood.meter.trim()) remember(METER, wood.meter.trim());
    onBooked({ entryId: answer.answer.entryId, labels: answer.answer.pieces.map((one) => one.label), wood: placed });
  }

  const place = sayWhere({ placeLabel: wood.placeLabel, newPlace }, places);
  const tallied = wood.tally.as === 'singly' ? wood.tally.lines.length : 1;
  const count = isPack ? tallied : Number(wood.count);
  const reasons = others.map((reason) => {
    const { says, todo } = sayPieceReason(reason);
    return { id: reason.code, word: reason.weight, sentence: says, toDo: todo };
  });

  const hasSapwood = wood.form === 'slab' || wood.form === 'board';
  const sizes = (
    <>
      {measure('length', 'Length', shop.prefer === 'metric' ? '2400 mm, 2.4 m' : '101 1/2, 8\' 5 1/2"')}
      <ChoiceChips
        label="Width"
        options={[
          { value: 'one', label: 'The same all along' },
          { value: 'three', label: 'At start, middle and end' },
        ]}
        value={wood.widths}
        onChange={(value) => setWood({ ...wood, widths: value === 'one' ? 'one' : 'three' })}
      />
      {wood.widths === 'one' ? (
        measure('width', 'Width all along')
      ) : (
        <>
          {measure('widthStart', 'Width at the start')}
          {measure('widthMiddle', 'Width in the middle', 'Halfway along.')}
          {measure('widthEnd', 'Width at the end')}
        </>
      )}
    </>
  );

  return (
    <form ref={form} onSubmit={book} noValidate style={{ display: 'contents' }}>
      {isBegun ? (
        <VerdictPanel
          key={verdict.word}
          word={verdict.word}
          headline={worst ? [sayPieceReason(worst).says] : ['Dry and whole, as it is typed.']}
          size="small"
          fresh={false}
        >
          {worst && sayPieceReason(worst).todo ? <p>{sayPieceReason(worst).todo}</p> : null}
        </VerdictPanel>
      ) : null}
      {drawn && piece ? (
        <div className={styles.drawing}>
          <PieceDrawing
            name="arriving"
            shape={drawn.shape}
            marks={pieceMarks(piece)}
            words={drawn.onWood}
            label={drawn.drawn}
          />
        </div>
      ) : null}
      {drawn ? (
        <p className={styles.note}>
          Drawn to scale from what is typed. Straps, breaks and checks are signs, not measured.
        </p>
      ) : null}
      {isBegun && reasons.length > 0 ? <ReasonList reasons={reasons} label="Also" /> : null}
      <p role="status" className={styles.said}>
        {said}
      </p>
      {unasked.length > 0 ? <NotAsked scans={unasked} onAgain={again} onDrop={drop} /> : null}
      <div className={styles.columns}>
        <Section title="What it is">
          <ChoiceChips
            label="Form"
            options={PIECE_FORMS.map((value) => ({ value, label: FORM_WORDS[value] }))}
            value={wood.form}
            onChange={(value) => setWood(withForm(wood, value as TypedWood['form']))}
          />
          <TextField
            label="Species"
            hint="As you call it: walnut, white oak, birch plywood."
            value={wood.species}
            onChange={(species) => setWood((now) => ofAnotherWood(now, first, species))}
            list={speciesId}
            autoCapitalize="sentences"
            error={errors.species}
          />
          <datalist id={speciesId}>
            {offered.map(({ name, alsoKnownAs }) => (
              <option key={name} value={name} label={alsoKnownAs} />
            ))}
          </datalist>
          {isPack ? null : sizes}
          {measure('thickness', 'Thickness', '8/4 is read as 2 inches.')}
          <SoldFields form={wood.form} typed={wood} onChange={(some) => setWood((now) => ({ ...now, ...some }))} />
          {isPack ? null : (
            <>
              <NumberStep
                label="How many like this"
                hint="Each gets a label of its own."
                min={1}
                max={MOST_AT_ONCE}
                unit={{ one: wood.form, many: `${wood.form}s` }}
                value={wood.count}
                onChange={set('count')}
                error={errors.count}
              />
              <CheckChips
                label="What you see"
                optional
                options={PIECE_FLAGS.map((value) => ({ value, label: FLAG_WORDS[value] }))}
                values={wood.flags}
                onChange={set('flags')}
              />
            </>
          )}
          {wood.form === 'sheet' && piece ? (
            <p className={styles.note}>{saySheets(piece, count, shop.prefer)}</p>
          ) : null}
          {isPack ? (
            <TallyFields
              tally={wood.tally}
              onChange={set('tally')}
              prefer={shop.prefer}
              sold={wood}
              error={errors.tally}
            />
          ) : null}
        </Section>
        <div>
          {wood.form === 'sheet' ? null : (
            <Section title="Moisture">
              <TextField
                label="The meter reads, %"
                hint="Mid-length, away from ends and knots. Without a reading it asks for care until it is read."
                optional
                inputMode="decimal"
                value={wood.moisture}
                onChange={set('moisture')}
                echo={sayMoisture(wood.moisture)}
                error={errors.moisture ?? errors.reading}
              />
              {wood.moisture.trim() ? (
                <>
                  <TextField
                    label="Which meter"
                    hint="Pin or pinless, and its species setting."
                    optional
                    value={wood.meter}
                    onChange={set('meter')}
                    error={errors.meter}
                  />
                  <TextField
                    label="Where on the piece"
                    optional
                    value={wood.spot}
                    onChange={set('spot')}
                    error={errors.spot}
                  />
                </>
              ) : null}
            </Section>
          )}
          <Section title="Into the book">
            <PlaceChoice
              places={places}
              where={{ placeLabel: wood.placeLabel, newPlace }}
              onChange={(where) => {
                set('placeLabel')(where.placeLabel);
                setNewPlace(where.newPlace);
              }}
              adding={adding}
              error={errors.placeLabel}
            />
            <TextField
              label={isPack ? `Cost of all of them, ${shop.currency}` : `Cost of one, ${shop.currency}`}
              hint={isPack ? 'Each board carries its share of it by its face.' : undefined}
              optional
              inputMode="decimal"
              value={wood.cost}
              onChange={set('cost')}
              error={errors.cost}
            />
            {isPack && wood.tally.as === 'pack' ? (
              <SellerFields tally={wood.tally} onChange={set('tally')} error={errors.sellerBoardFeet} />
            ) : null}
            <PhotoField photo={photo} onChange={setPhoto} error={errors.photo} />
          </Section>
          {hasSapwood ? (
            <Fold title="Sapwood" now={wood.sapwood || 'how deep it runs'}>
              {measure('sapwood', 'Sapwood, how deep from the edge', 'Where it runs deepest. It can stay empty.')}
            </Fold>
          ) : null}
          <OriginFold
            origin={wood.origin}
            species={wood.species}
            order={shop.order}
            onChange={set('origin')}
            error={errors.origin}
          />
          <Fold
            title="Flitch"
            now={wood.flitch ? [wood.flitch, wood.flitchNumber].filter(Boolean).join(', ') : 'which log it came from'}
          >
            <TextField
              label="Flitch"
              hint="The log it was sawn from, as you call it."
              optional
              value={wood.flitch}
              onChange={set('flitch')}
              error={errors.flitch}
            />
            {isPack ? null : (
              <TextField
                label={count > 1 ? 'Number of the first in the flitch' : 'Number in the flitch'}
                hint={count > 1 ? 'The others follow on.' : undefined}
                optional
                inputMode="numeric"
                value={wood.flitchNumber}
                onChange={set('flitchNumber')}
                error={errors.flitchNumber}
              />
            )}
          </Fold>
          <Fold title="When, and a note" now={wood.note ? 'has a note' : 'today'}>
            <DateTextField
              label="Arrived on"
              optional
              hint="Today, if this stays empty."
              placeholder={sayDate(shop.today, { order: shop.order })}
              today={shop.today}
              order={shop.order}
              aim="past"
              value={wood.receivedOn}
              onChange={set('receivedOn')}
              error={errors.receivedOn}
            />
            <TextField label="Note" optional lines={3} value={wood.note} onChange={set('note')} error={errors.note} />
          </Fold>
        </div>
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key
          type="submit"
          pending={pending || adding.pending}
          pendingWords={photo ? 'Sending the photo, writing…' : 'Writing into the book…'}
        >
          {`${count > 1 ? `${count} into the book` : 'Into the book'}, ${place ?? 'no place yet'}`}
        </Key>
      </KeyBar>
    </form>
  );
}

function sayMoisture(text: string): Echo {
  if (text.trim() === '') return null;
  const read = readMoisture(text);
  return read.ok
    ? { ok: true, says: `Reads as ${read.value / 10} %.` }
    : { ok: false, says: sayMoistureError(read.error) };
}
