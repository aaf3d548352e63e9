import { z } from 'zod';
import { readTypedPlan, SOLIDS, type TypedPlan } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import { readRiverQuestion } from '@/app/(shop)/on-hand/fits/river-question';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { parseTemperature } from '@/shared/units/parse-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

type Typing = { prefer: UnitSystem; today: CalendarDate; order: DateOrder };

const id = z.int().positive();
const text = z.string().max(80, 'That is too long.');
const words = z.string().max(1000, 'That is too long. A few sentences will do.');

const typedPlan = z.object({
  name: text,
  systemId: text,
  from: z.enum(['river', 'drawing', 'form', 'shape', 'stations']),
  fills: z
    .array(z.object({ id: z.string().max(80), name: z.string().max(1200), on: z.boolean(), area: text, depth: text }))
    .max(200),
  shape: z.enum(SOLIDS),
  measures: z.record(z.string().max(20), text),
  wood: text,
  stations: z
    .array(z.object({ at: text, width: text, bottom: text, depth: text }))
    .max(60, 'That is more than 60 stations.'),
  depth: text,
  riverDepth: text,
  sealArea: text,
  sealRate: text,
  leakage: text,
  loss: text,
  room: text,
  bucket: text,
  minutes: text,
  step: text,
  lifts: text,
  first: text,
  reason: words,
});

const label = z.string().transform((typed, context) => {
  const read = parseOwnLabel(typed);
  if (read.ok) return read.value.code as string;
  context.addIssue({ code: 'custom', message: 'That is none of our own labels.' });
  return z.NEVER;
});

/** What the screen showed of a river; where it runs is searched for again. Square millimetres. */
const seenArea = z.number().positive().max(400_000_000);
const river = z.discriminatedUnion('is', [
  z.object({
    is: z.literal('asked'),
    labels: z.array(label).min(1).max(2),
    asked: z.string().max(1000),
    area: seenArea,
  }),
  z.object({ is: z.literal('kept'), area: seenArea }),
]);

/** A pour as its form sends it: read here again, whatever the screen made of it. */
export function pourSchema(typing: Typing) {
  return z
    .object({
      jobId: id,
      pourId: id.optional(),
      partId: id.nullable().optional(),
      typed: typedPlan,
      river: river.optional(),
    })
    .transform(({ typed, river: seen, ...rest }, context) => {
      const plan: TypedPlan = typed;
      const wanted = plan.from === 'river' ? seen : undefined;
      const { figures, first, faults } = readTypedPlan(plan, { ...typing, riverArea: wanted?.area });
      const question = wanted?.is === 'asked' ? readRiverQuestion(wanted.asked, typing) : undefined;
      if (wanted?.is === 'asked' && !question) {
        faults.river ??= 'What the river was searched by does not read any more. Search for it again.';
      }
      for (const [field, message] of Object.entries(faults)) {
        context.addIssue({ code: 'custom', path: [field], message });
      }
      if (!figures || !first || Object.keys(faults).length > 0) return z.NEVER;
      const asked = wanted?.is === 'asked' && question ? { ...wanted, ...question } : undefined;
      const filled = wanted?.is === 'kept' ? wanted : asked;
      const { name, reason } = plan;
      return {
        ...rest,
        systemId: Number(plan.systemId),
        name,
        figures,
        first,
        reason,
        typed: { plan: JSON.stringify(plan) } as Record<string, string>,
        ...(filled && { river: filled }),
      };
    });
}

export const removeSchema = z.object({ pourId: id, why: words });

const slot = {
  pourId: id,
  nr: z.int().min(0).max(40),
  batch: z.int().min(1).max(1000),
  part: z.enum(['A', 'B']),
  more: z.boolean().optional(),
};

/** What was scanned for a part of a lift. */
export const scanSchema = z.object({
  ...slot,
  scan: z.object({ text: z.string().min(1).max(5000), symbology: z.string().max(4).optional() }),
});

const weight = z.int().nonnegative();

export const weighSchema = z.object({
  ...slot,
  label,
  mass: z.int('Type an amount above zero.').positive('Type an amount above zero.'),
  weighed: z.object({ beforeMg: weight.optional(), afterMg: weight }).optional(),
  seen: z.enum(['use', 'care', 'stop']),
  override: z
    .object({ reason: words.min(1, 'Write why it is used anyway, in a few words.'), inspectionId: id })
    .optional(),
  below: z.object({ sanded: z.boolean().optional(), early: words.optional() }).optional(),
});

/** A lift as it was poured, with the room as it is typed. */
export function liftSchema({ prefer }: Pick<Typing, 'prefer'>) {
  return z
    .object({
      pourId: slot.pourId,
      nr: slot.nr,
      room: text,
      humidity: text,
      note: words,
      reason: words,
      sanded: z.boolean().optional(),
      photo: z.instanceof(File).optional(),
      happenedOn: z.string().max(10).optional(),
    })
    .transform(({ room, humidity, happenedOn, ...rest }, context) => {
      const issue = (path: string, message: string): undefined => {
        context.addIssue({ code: 'custom', path: [path], message });
      };
      const degrees = parseTemperature(room, { prefer });
      if (!degrees.ok) issue('room', 'Give the temperature of the room, for example 20 °C or 68 °F.');
      const percent = humidity.trim() === '' ? undefined : Number(humidity.trim().replace('%', '').replace(',', '.'));
      if (percent !== undefined && !(percent >= 0 && percent <= 100)) issue('humidity', 'Give a number from 0 to 100.');
      const day = happenedOn === undefined ? undefined : parseCalendarDate(happenedOn);
      if (day && !day.ok) issue('happenedOn', 'Give one whole day.');
      if (!degrees.ok) return z.NEVER;
      return {
        ...rest,
        room: degrees.value,
        humidityTenths: percent === undefined ? undefined : Math.round(percent * 10),
        happenedOn: day?.ok ? day.value : undefined,
      };
    });
}
