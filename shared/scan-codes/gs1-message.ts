import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import { type Gs1Date, gs1Date } from '@/shared/scan-codes/gs1-date';
import type { Gs1Element, Gs1Fault } from '@/shared/scan-codes/gs1-element';
import { type Gs1Measure, gs1Measures } from '@/shared/scan-codes/gs1-measures';
import { type PairingNote, pairingNotes } from '@/shared/scan-codes/pairing-notes';

/** The dates a workshop acts on. A best-before or use-by printed without a day holds to the end of its month. */
type Gs1Dates = {
  readonly madeOn?: Gs1Date;
  readonly packagedOn?: Gs1Date;
  readonly bestBefore?: Gs1Date;
  readonly sellBy?: Gs1Date;
  readonly useBy?: Gs1Date;
};

/** What a GS1 message says, drawn out of its elements. */
export type Gs1Message = {
  readonly elements: readonly Gs1Element[];
  /** Fourteen digits: the item itself (AI 01 or 03), else the piece it is one of (8006), else what it contains (02). */
  readonly gtin?: string;
  readonly lot?: string;
  readonly serial?: string;
  readonly dates: Gs1Dates;
  readonly measures: readonly Gs1Measure[];
  /** How many items (AI 30) or contained items (AI 37). */
  readonly count?: number;
  /**
   * What to look the thing up by: the GTIN, else the first other key as `(00)...`. Missing where the symbol carries
   * only a lot or dates, and the product's own symbol must be scanned as well.
   */
  readonly canonical?: string;
  readonly pairing: readonly PairingNote[];
};

/** AIs of each date, the first present one counting; longer values begin with the six digits of the date. */
const DATES: Readonly<Record<keyof Gs1Dates, readonly string[]>> = {
  madeOn: ['11', '8008'],
  packagedOn: ['13'],
  bestBefore: ['15'],
  sellBy: ['16'],
  useBy: ['17', '7003'],
};

/**
 * Draws product, lot, serial number, dates and measures from elements that have been read.
 *
 * Fails with `no-such-day` where the century rule puts a 29 February in a year without one.
 * Source: GS1 General Specifications section 3.
 */
export function gs1Message(elements: readonly Gs1Element[], today: CalendarDate): Result<Gs1Message, Gs1Fault> {
  const byAi = new Map(elements.map((element) => [element.ai, element]));
  const first = (...ais: readonly string[]): Gs1Element | undefined =>
    ais.map((ai) => byAi.get(ai)).find((element) => element !== undefined);
  const dates: { -readonly [name in keyof Gs1Dates]: Gs1Date } = {};
  for (const name of Object.keys(DATES) as (keyof Gs1Dates)[]) {
    const element = first(...DATES[name]);
    if (!element) continue;
    const date = gs1Date(element.value.slice(0, 6), today);
    if (!date) return err({ code: 'no-such-day', at: element.at, ai: element.ai, title: element.title });
    dates[name] = date;
  }
  const gtin = first('01', '03', '8006', '02')?.value.slice(0, 14);
  const key = elements.find((element) => AI_DICTIONARY.get(element.ai)?.qualifiers);
  const canonical = gtin ?? (key && `(${key.ai})${key.value}`);
  const lot = first('10')?.value;
  const serial = first('21')?.value;
  const count = first('30', '37')?.value;
  return ok({
    elements,
    ...(gtin !== undefined && { gtin }),
    ...(lot !== undefined && { lot }),
    ...(serial !== undefined && { serial }),
    dates,
    measures: gs1Measures(elements),
    ...(count !== undefined && { count: Number(count) }),
    ...(canonical !== undefined && { canonical }),
    pairing: pairingNotes(elements),
  });
}
