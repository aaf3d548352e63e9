'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { FinishChoice } from '@/app/_server/finish/list-finishes';
import type { PartLine } from '@/app/_server/jobs/read-parts';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { NumberStep } from '@/app/_ui/field/number-step';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/jobs/[id]/finish/_ui/finish.module.css';
import { planCoatsAction } from '@/app/(shop)/jobs/[id]/finish/actions';
import { cautionsOf } from '@/app/(shop)/pull/_ui/cautions-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { readTypedDate } from '@/shared/calendar/read-typed-date';
import { sayDate } from '@/shared/calendar/say-date';
import { sayWeekday } from '@/shared/calendar/say-weekday';
import { printArea, readArea } from '@/shared/finish/area-text';
import { coatDays } from '@/shared/finish/coat-days';
import { coatedArea } from '@/shared/finish/coated-area';
import { coatsNeed } from '@/shared/finish/coats-need';
import { readCoverage, sayCoverage, typedCoverage } from '@/shared/finish/coverage-text';
import { wetFilm } from '@/shared/finish/wet-film';
import { type ClosedDays, openDay } from '@/shared/timeline/closed-days';
import { inStockUnit } from '@/shared/units/in-stock-unit';
import { printQuantity } from '@/shared/units/print-quantity';
import type { UnitSystem } from '@/shared/units/unit-system';

export type PlanCoatsFormProps = {
  jobId: number;
  finishes: readonly FinishChoice[];
  parts: readonly (PartLine & { says: string })[];
  /** The part they are likeliest for; null is the whole job. */
  part: number | null;
  closed: ClosedDays;
  /** The day the first coat of each part may be, and of the whole job. */
  firstDays: readonly { partId: number | null; day: CalendarDate }[];
  today: CalendarDate;
  order: DateOrder;
  prefer: UnitSystem;
};

/** Wiped and brushed finishes leave about so much in the cloth, the tin and the brush. Common practice. */
const USUAL_LOSS = '10';

/** Asks for the coats, and shows at once what they take and when they are. */
export function PlanCoatsForm(props: PlanCoatsFormProps) {
  const { jobId, finishes, parts, part, closed, firstDays, today, order, prefer } = props;
  const router = useRouter();
  const say = useNotice();
  const { run, pending, problem } = useAct(planCoatsAction);
  const [productId, setProductId] = useState(String(finishes[0]?.id ?? ''));
  const product = finishes.find(({ id }) => String(id) === productId);
  const [partIds, setPartIds] = useState<string[]>(part === null ? [] : [String(part)]);
  const [faces, setFaces] = useState('2');
  const [area, setArea] = useState('');
  const [ownCoats, setCoats] = useState<string>();
  const [ownCoverage, setCoverage] = useState<string>();
  const [loss, setLoss] = useState(USUAL_LOSS);
  const [ownDay, setDayText] = useState<string>();
  const sheet = product?.sheet ?? undefined;
  const coats = ownCoats ?? String(sheet?.coats ?? 2);
  const coverage =
    ownCoverage ?? (sheet?.coverageTenths === undefined ? '' : typedCoverage(sheet.coverageTenths, { prefer }));
  const chosen = parts.filter(({ id }) => partIds.includes(String(id)));
  const [only] = chosen.length === 1 ? chosen : [];
  const first = firstDays.find(({ partId }) => partId === (only?.id ?? null))?.day ?? today;
  const dayText = ownDay ?? sayDate(first, { order });
  const values = { productId, partIds, area, coats, coverage, loss, firstDay: dayText };
  const errors = useFieldErrors(problem, values);

  const read = readTypedDate(dayText, { today, order, aim: 'ahead' });
  const firstDay = read.ok && !read.value.ambiguous && read.value.precision === 'day' ? read.value.date : undefined;
  const areas = chosen.map((part) => coatedArea(part, faces === '1' ? 1 : 2));
  const typedArea = readArea(area, { prefer });
  const ofParts = areas.some((one) => one === undefined)
    ? undefined
    : areas.reduce<number>((sum, one) => sum + (one ?? 0), 0);
  const areaMm2 = typedArea.ok ? typedArea.value : ofParts || undefined;
  const coverageTenths = readCoverage(coverage, { prefer });
  const need =
    areaMm2 !== undefined && coverageTenths.ok
      ? coatsNeed({ areaMm2, coats: Number(coats), coverageTenths: coverageTenths.value, lossPercent: Number(loss) })
      : undefined;
  const inUnit = (amount: Parameters<typeof inStockUnit>[0]) =>
    product ? inStockUnit(amount, 'uL', product.unit, product.densityGramsPerLitre) : undefined;
  const print = (amount: Parameters<typeof inStockUnit>[0]) => {
    const converted = inUnit(amount);
    return product && converted?.ok
      ? printQuantity(converted.value, product.unit, { prefer, rounding: 'up' })
      : undefined;
  };
  const days = firstDay && coatDays(Number(coats), firstDay, sheet ?? {}, (day) => openDay(day, closed));
  const date = (day: CalendarDate) => `${sayWeekday(day)} ${sayDate(day, { order, today })}`;

  async function plan() {
    const answered = await run({
      jobId,
      productId,
      partIds: chosen.map(({ id }) => id),
      faces: faces === '1' ? 1 : 2,
      area,
      coats,
      coverage,
      loss,
      firstDay: firstDay ?? '',
    });
    if (!answered.ok) return giveFeedback('error');
    const count = answered.answer.days.length;
    say({ words: `${count === 1 ? 'One coat is' : `${count} coats are`} on the time line, with what they take.` });
    router.push(`/jobs/${jobId}`);
  }

  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void plan();
      }}
    >
      <div className={styles.columns}>
        <div>
          <SelectField
            label="Finish"
            options={finishes.map(({ id, name }) => ({ value: String(id), label: name }))}
            value={productId}
            onChange={(value) => {
              setProductId(value);
              setCoats(undefined);
              setCoverage(undefined);
            }}
            error={errors.productId}
          />
          {parts.length > 0 ? (
            <>
              <CheckChips
                label="On which parts"
                options={parts.map(({ id, name, says }) => ({ value: String(id), label: name, hint: says }))}
                values={partIds}
                onChange={setPartIds}
                hint={parts.length < 2 ? undefined : sayWaits(chosen)}
                error={errors.partIds}
              />
              <ChoiceChips
                label="Faces"
                options={[
                  { value: '2', label: 'Both faces', hint: 'even movement' },
                  { value: '1', label: 'One face' },
                ]}
                value={faces}
                onChange={setFaces}
              />
            </>
          ) : null}
          <QuantityField
            label="Area"
            hint={
              parts.length === 0
                ? 'No part is named, so the area is typed.'
                : ofParts === undefined
                  ? 'The size of a part is missing: type the area, or give its lengths under Parts.'
                  : `${printArea(ofParts, { prefer })} by the parts, edges too. Type another where that is not it.`
            }
            optional={ofParts !== undefined && ofParts > 0}
            value={area}
            onChange={setArea}
            error={errors.area}
            read={(text) => {
              const typed = readArea(text, { prefer });
              return typed.ok
                ? { ok: true, says: `${printArea(typed.value, { prefer })}.` }
                : {
                    ok: false,
                    says: `Give a number with its unit, for example ${prefer === 'metric' ? '2.5 m²' : '27 ft²'}.`,
                  };
            }}
          />
          <NumberStep label="Coats" value={coats} onChange={setCoats} min={1} max={30} error={errors.coats} />
          <QuantityField
            label={prefer === 'metric' ? 'How far it goes, m² a litre' : 'How far it goes, ft² a gallon'}
            hint={
              sheet?.coverageTenths === undefined
                ? 'As its data sheet says for one coat.'
                : `${sheet.from === 'sheet' ? 'Its sheet says' : 'Typed without a sheet:'} ${sayCoverage(sheet.coverageTenths, { prefer })}.`
            }
            value={coverage}
            onChange={setCoverage}
            error={errors.coverage}
            read={(text) => {
              const typed = readCoverage(text, { prefer });
              return typed.ok
                ? { ok: true, says: `${Math.round(wetFilm(typed.value))} µm wet, a coat.` }
                : { ok: false, says: 'A number that a finish can reach.' };
            }}
          />
          <NumberStep
            label="Lost, per cent"
            hint="What stays in the tin, the cloth or the air. Spraying loses far more."
            value={loss}
            onChange={setLoss}
            min={0}
            max={90}
            step={5}
            error={errors.loss}
          />
          <DateTextField
            label="First coat on"
            today={today}
            order={order}
            aim="ahead"
            value={dayText}
            onChange={(text) => setDayText(text)}
            error={firstDay ? undefined : errors.firstDay}
          />
        </div>
        <div>
          <Section title="What comes of it">
            {sheet ? null : (
              <p className={styles.care}>
                No sheet of it is in the book: coats are a day apart, and when it is cured is not known. Write it down
                on the page of the product.
              </p>
            )}
            {need?.ok && print(need.value.each) ? (
              <p className={styles.need} role="status">
                <b>{print(need.value.total)}</b> in all, {print(need.value.each)} a coat, on{' '}
                {printArea(areaMm2 ?? 0, { prefer })}.
              </p>
            ) : (
              <p className={styles.soft}>
                {need?.ok
                  ? 'It is counted by weight and its density is not known: give that on the page of the product.'
                  : 'How much it takes is said as soon as the area and how far it goes are known.'}
              </p>
            )}
            {days?.ok ? (
              <ol className={styles.days} aria-label="The coats and their days">
                {days.value.coats.map(({ on, joins }, nr) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: coats are told apart by their number alone.
                  <li key={nr}>
                    <b>Coat {nr + 1}</b> {date(on)}
                    {joins === 'sand-first' ? <span className={styles.soft}>, sanded first</span> : null}
                  </li>
                ))}
                {days.value.curedOn ? (
                  <li>
                    <b>Cured</b> {date(days.value.curedOn)}
                  </li>
                ) : null}
              </ol>
            ) : null}
          </Section>
          {product ? (
            <Section title="Mind">
              <ul className={styles.mind}>
                {cautionsOf(product.kind, product.hazards).map((caution) => (
                  <li key={caution}>{caution}</li>
                ))}
                <li>Its own data sheet comes first, for days and for safety.</li>
              </ul>
            </Section>
          ) : null}
        </div>
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing into the book">
          {coats === '1' ? 'Put the coat on the time line' : `Put ${coats} coats on the time line`}
        </Key>
        <LinkKey variant="ghost" href={`/jobs/${jobId}`}>
          Leave it
        </LinkKey>
      </KeyBar>
    </form>
  );
}

/** What the coats wait for, by the parts they go on. */
function sayWaits(chosen: readonly { name: string }[]): string {
  const [first, ...more] = chosen;
  if (!first) return 'On no part of its own: these coats wait for everything in the job.';
  return more.length === 0
    ? `These coats wait for ${first.name}, not for the other parts.`
    : 'On several parts at once: these coats wait for everything in the job.';
}
