'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import type { KeptRiver } from '@/app/_server/pours/kept-river';
import type { NamedPiece } from '@/app/_server/pours/named-pieces';
import { useAct } from '@/app/_ui/act/use-act';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { type PartChoice, PartField } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import { NamedPieces } from '@/app/(shop)/jobs/[id]/pours/_ui/named-pieces';
import { PlanResult } from '@/app/(shop)/jobs/[id]/pours/_ui/plan-result';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { RiverFields } from '@/app/(shop)/jobs/[id]/pours/_ui/river-fields';
import { SpaceFields } from '@/app/(shop)/jobs/[id]/pours/_ui/space-fields';
import { useSealOfBanks } from '@/app/(shop)/jobs/[id]/pours/_ui/use-seal-of-banks';
import { keepPourAction } from '@/app/(shop)/jobs/[id]/pours/actions';
import { sayBanks } from '@/app/(shop)/jobs/[id]/pours/say-river';
import { readTypedPlan, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { beyondTheSheet } from '@/shared/pour/beyond-the-sheet';
import { type PourAsk, planPour } from '@/shared/pour/plan-pour';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { sayPlanError } from '@/shared/pour/say-plan-error';
import { type ClosedDays, closedOn } from '@/shared/timeline/closed-days';
import type { UnitSystem } from '@/shared/units/unit-system';

type PlanSystem = { id: number; name: string; sheet: ResinSheet | null };

/** Wood of the job that can stand in a form. */
export type PlanWood = { label: string; words: string; litres: string };

export type PlanFormProps = {
  jobId: number;
  job: string;
  /** The pour that is planned anew. */
  pourId?: number;
  /** The parts of the job, and the one it is for, or likeliest for; null is the whole job. */
  parts: readonly PartChoice[];
  part: number | null;
  start: TypedPlan;
  systems: readonly PlanSystem[];
  wood: readonly PlanWood[];
  /** The river that is offered: as its slabs give it now, or as the pour kept it when it was planned before. */
  river?: KeptRiver | undefined;
  isRiverKept?: boolean;
  /** The pieces it was opened for. */
  named?: readonly NamedPiece[];
  closed: ClosedDays;
  /** What was begun of it and stays. */
  poured?: PourAsk['poured'];
  today: CalendarDate;
  order: DateOrder;
  units: UnitSystem;
};

/** A pour: what is to be filled, with what, how; beside it what comes out, reckoned while it is typed. */
export function PlanForm(props: PlanFormProps) {
  const { jobId, job, pourId, start, systems, wood, river, isRiverKept = false, named = [] } = props;
  const { closed, poured, today, order, units } = props;
  const router = useRouter();
  const say = useNotice();
  const { run, pending, problem } = useAct(keepPourAction);
  const [typed, setTyped] = useState(start);
  const [partId, setPartId] = useState(props.part);
  const [pressed, setPressed] = useState(false);
  const set = (change: Partial<TypedPlan>) => setTyped((now) => ({ ...now, ...change }));
  const seal = useSealOfBanks(start, river?.banks, units);
  const { figures, first, faults } = readTypedPlan(typed, { prefer: units, today, order, riverArea: river?.area });
  const system = systems.find(({ id }) => String(id) === typed.systemId);
  const sheet = system?.sheet ?? undefined;
  const planned =
    figures && sheet
      ? planPour({ ...figures, sheet, first: first ?? today, poured }, (day) => closedOn(day, closed) !== undefined)
      : undefined;
  const plan = planned?.ok ? planned.value : undefined;
  const beyond = plan && beyondTheSheet(plan);
  const error = (field: string) =>
    (pressed ? faults[field] : undefined) ?? (pressed ? problem?.fields?.[field] : undefined);
  const metric = units === 'metric';

  async function keep() {
    setPressed(true);
    if (Object.keys(faults).length > 0 || !sheet) return giveFeedback('error');
    const answered = await run({
      jobId,
      pourId,
      partId,
      typed,
      river: typed.from === 'river' ? sentRiver(river, isRiverKept) : undefined,
    });
    if (!answered.ok) {
      // The slabs are not what they were: the page shows how they are now, what was typed stays.
      if (answered.problem.code?.startsWith('river-')) router.refresh();
      return giveFeedback('error');
    }
    say({ words: `${typed.name.trim()} is planned.` });
    router.push(`/jobs/${jobId}/pours/${answered.answer.pourId}`);
  }

  const text = (field: keyof TypedPlan & string, label: string, more: { hint?: string; optional?: boolean } = {}) => (
    <TextField
      label={label}
      {...more}
      value={String(typed[field])}
      onChange={(value) => set({ [field]: value })}
      error={error(field)}
    />
  );
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void keep();
      }}
    >
      <div className={styles.columns}>
        <div className={styles.fields}>
          {text('name', 'Name of the pour', { hint: 'What you call it in the shop, for example River.' })}
          {props.parts.length > 0 ? (
            <PartField
              label="Part it is poured for"
              hint="What is done to that part waits for it. Poured for the whole job, everything waits."
              parts={props.parts}
              value={partId}
              onChange={setPartId}
              error={error('partId')}
            />
          ) : null}
          <SelectField
            label="Resin"
            none="Choose the resin"
            options={systems.map(({ id, name, sheet: known }) => ({
              value: String(id),
              label: known ? name : `${name}, no numbers yet`,
            }))}
            value={typed.systemId}
            onChange={(systemId) => set({ systemId })}
            error={error('systemId')}
          />
          {system && !sheet ? (
            <p className={styles.defer}>
              The book has no numbers for {system.name} yet.{' '}
              <a href={`/resin/${system.id}`}>Write its sheet down first</a>.
            </p>
          ) : null}
          <SpaceFields
            typed={typed}
            set={(change) => set({ ...change, ...seal.after(typed, change) })}
            wood={wood}
            units={units}
            error={error}
            river={
              river || start.from === 'river' ? (
                <RiverFields
                  river={river}
                  jobId={jobId}
                  depth={typed.riverDepth}
                  setDepth={(riverDepth) => set({ riverDepth, ...seal.after(typed, { riverDepth }) })}
                  error={error}
                  today={today}
                  order={order}
                  units={units}
                />
              ) : undefined
            }
            named={named.length > 0 ? <NamedPieces pieces={named} jobId={jobId} job={job} units={units} /> : undefined}
          />
          <fieldset className={styles.group}>
            <legend>Beside what it fills</legend>
            <div className={styles.pair}>
              <TextField
                label={metric ? 'Bare wood to seal, m²' : 'Bare wood to seal, ft²'}
                optional
                hint={
                  typed.from === 'river' && river && !seal.isOwn
                    ? `${sayBanks(river, units)} Brushed on before the first lift.`
                    : 'Brushed on before the first lift, so that no air comes out of the wood.'
                }
                value={typed.sealArea}
                onChange={(sealArea) => {
                  seal.typedOver();
                  set({ sealArea });
                }}
                error={error('sealArea')}
              />
              {text('sealRate', metric ? 'Seal coat, mL a m²' : 'Seal coat, fl oz a ft²')}
              {text('leakage', 'Leaks away, %', { hint: 'Under the form and into checks.' })}
              {text('loss', 'Stays in each bucket', { optional: true })}
            </div>
          </fieldset>
          <fieldset className={styles.group}>
            <legend>How it is poured</legend>
            <DateTextField
              label="First day"
              hint={
                poured
                  ? 'Closed days are left out, and so are those before the lift below can be poured on.'
                  : 'Closed days are left out.'
              }
              today={today}
              order={order}
              aim="ahead"
              value={typed.first}
              onChange={(value) => set({ first: value })}
              error={error('first')}
            />
            <div className={styles.pair}>
              {text('room', 'The room, by then')}
              {text('lifts', 'Number of lifts', { optional: true, hint: 'Empty: the fewest the sheet allows.' })}
              {text('bucket', 'A bucket takes', { hint: 'With room to stir.' })}
              {text('minutes', 'Minutes a kilogram takes', { hint: 'To weigh, stir and pour; within the pot life.' })}
              {text('step', 'The scale’s step')}
            </div>
          </fieldset>
          {beyond || typed.reason !== '' ? (
            <TextField
              label="Why does it go beyond the sheet?"
              hint="It stays with the pour. The maker’s sheet goes before anything here."
              lines={3}
              value={typed.reason}
              onChange={(reason) => set({ reason })}
              maxLength={1000}
              error={error('reason')}
            />
          ) : null}
          {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
        </div>
        <div className={styles.beside}>
          {plan ? (
            <PlanResult plan={plan} sheet={sheet} today={today} order={order} units={units} />
          ) : (
            <Section title="What comes out">
              {planned && !planned.ok ? (
                <PlanTrouble {...sayPlanError(planned.error)} />
              ) : (
                <p className={styles.soft}>
                  Fill in what it fills and the resin: its lifts, days and grams stand here at once.
                </p>
              )}
            </Section>
          )}
        </div>
      </div>
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing into the book">
          {pourId === undefined ? `Plan ${typed.name.trim() || 'the pour'} for ${job}` : 'Plan it anew'}
        </Key>
        <LinkKey variant="ghost" href={pourId === undefined ? `/jobs/${jobId}` : `/jobs/${jobId}/pours/${pourId}`}>
          Leave it
        </LinkKey>
      </KeyBar>
    </form>
  );
}

/** What the action is told of the river: what was seen of it, and how to search for it again. */
function sentRiver(river: KeptRiver | undefined, isKept: boolean) {
  if (!river) return undefined;
  const { area, labels, asked } = river;
  return isKept ? { is: 'kept' as const, area } : { is: 'asked' as const, area, labels, asked };
}

function PlanTrouble({ what, todo }: { what: string; todo: string }) {
  return (
    <div role="status" className={styles.defer}>
      <p>
        <b>{what}</b>
      </p>
      <p>{todo}</p>
    </div>
  );
}
