import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

export type Spot = { readonly along?: Nanometres; readonly depth?: Nanometres };

/** A length as it is written inside a sentence: it begins with a figure, and a comma in it stands before another. */
const LENGTH = String.raw`((?:\d|[½¼¾])(?:[\d.'"″′ /½¼¾-]|,(?=\d))*(?:[a-z]+)?["″′]?)`;
const FROM_END = new RegExp(
  String.raw`(?:^|[,;\s])${LENGTH}\s+from\s+(?:the\s+|an\s+|one\s+|either\s+|nearer\s+)?end`,
  'i',
);
const DEEP = new RegExp(String.raw`(?:^|[,;\s])${LENGTH}\s+deep\b`, 'i');
const HALFWAY = /\bmid[\s-]?(?:length|way)\b|\bhalf[\s-]?way\b|\bmiddle of (?:the|its) length\b/i;

/**
 * Where on the piece a reading was taken, as far as its words say it in a way that can be counted: `300 mm from the end`,
 * `mid-length`, `20 mm deep`. What does not read is left out rather than guessed. A distance beyond the piece is left out.
 */
export function readSpot(spot: string, length: Nanometres, prefer: UnitSystem): Spot {
  const measure = (pattern: RegExp) => {
    const text = pattern.exec(spot)?.[1]?.trim();
    const read = text ? parseLength(text, { prefer }) : undefined;
    return read?.ok ? read.value : undefined;
  };
  const fromEnd = measure(FROM_END);
  const along = fromEnd ?? (HALFWAY.test(spot) ? nanometres(Math.floor(length / 2)) : undefined);
  const depth = measure(DEEP);
  return { ...(along !== undefined && along <= length && { along }), ...(depth !== undefined && { depth }) };
}
