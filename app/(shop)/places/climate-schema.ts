import { z } from 'zod';
import { type AirOfDay, MOST_LINES } from '@/app/_server/climate/log-air';
import type { SetSeason } from '@/app/_server/climate/set-season';
import { words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { MOST_LOGGER_TEXT } from '@/app/(shop)/places/most-logger-text';
import { readTypedAir } from '@/app/(shop)/places/read-typed-air';
import { placeLabel } from '@/app/(shop)/places/schema';
import { readAirLines } from '@/shared/wood/read-air-lines';
import { airDays } from '@/shared/wood/room-air';

type LoggedAir = { label: string; lines: readonly AirOfDay[] };

const typedAir = { label: placeLabel, temperature: words(40), humidity: words(20) };

/** The air of a room on one day, as typed. */
export function airSchema(typing: Typing): z.ZodType<LoggedAir> {
  return z.object({ ...typedAir, takenOn: words(60) }).transform(({ label, takenOn, ...typed }, context) => {
    const read = readFields(typing, context);
    const on = read.day('takenOn', takenOn);
    if (takenOn.trim() === '') read.say('takenOn', 'Give the day.');
    const { air, problems } = readTypedAir(typed, typing.prefer);
    for (const [field, says] of Object.entries(problems)) read.say(field, says);
    return air && on ? { label, lines: [{ takenOn: on, ...air }] } : z.NEVER;
  });
}

/** What a logger wrote, as pasted: the lines that read become a mean a day, the others stay with whoever pasted them. */
export function airLinesSchema(typing: Typing): z.ZodType<LoggedAir> {
  return z
    .object({
      label: placeLabel,
      lines: z.string().max(MOST_LOGGER_TEXT, 'That is more than ten thousand lines. Paste a part of them at a time.'),
    })
    .transform(({ label, lines }, context) => {
      const read = readFields(typing, context);
      const found = readAirLines(lines, typing);
      const days = airDays(found.lines);
      if (days.length > MOST_LINES) read.say('lines', `Paste at most ${MOST_LINES} days at a time.`);
      else if (days.length > 0) return { label, lines: days.map(({ on, ...air }) => ({ takenOn: on, ...air })) };
      else read.say('lines', found.wrong.length > 0 ? 'None of these lines reads.' : 'Paste the lines of the logger.');
      return z.NEVER;
    });
}

/** The usual air of a room from a month on, as typed. */
export function seasonSchema(typing: Typing): z.ZodType<SetSeason> {
  return z
    .object({
      ...typedAir,
      name: words(60).refine((name) => name.trim() !== '', 'Give it a name, for example Winter.'),
      fromMonth: z.string().regex(/^([1-9]|1[0-2])$/, 'Choose the month it begins in.'),
    })
    .transform(({ label, name, fromMonth, ...typed }, context) => {
      const read = readFields(typing, context);
      const { air, problems } = readTypedAir(typed, typing.prefer);
      for (const [field, says] of Object.entries(problems)) read.say(field, says);
      return air ? { label, name, fromMonth: Number(fromMonth), ...air } : z.NEVER;
    });
}

export const removeSeasonSchema = z.object({ label: placeLabel, seasonId: z.int().positive() });
