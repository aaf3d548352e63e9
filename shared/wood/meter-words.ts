import { METER_KINDS, type MeterKind } from '@/shared/wood/moisture-reading';

export const METER_KIND_WORDS: Record<MeterKind, string> = {
  pin: 'Pin meter',
  pinless: 'Pinless meter',
  oven: 'Oven test',
  unknown: 'Not said',
};

const SIGNS: readonly [MeterKind, RegExp][] = [
  ['oven', /\boven\b/i],
  ['pinless', /\bpin[\s-]?less\b|\bwithout pins\b|\bno pins\b/i],
  ['pin', /\bpins?\b|\bhammer probe\b/i],
];

/** The kind of meter from the words written for it. `Pinless, set to oak` is pinless; a name alone is unknown. */
export function meterKindOf(meter: string): MeterKind {
  return SIGNS.find(([, sign]) => sign.test(meter))?.[0] ?? 'unknown';
}

/**
 * The words written for a meter of that kind: its name where that says the kind already, else the kind before it. What is
 * chosen wins over what the words said before, so they always read back as the kind.
 */
export function meterWords(kind: MeterKind, name: string): string {
  const given = name.trim();
  if (meterKindOf(given) === kind) return given;
  const before = METER_KINDS.map((each) => METER_KIND_WORDS[each]).find((words) => given.startsWith(words)) ?? '';
  const rest = given.slice(before.length).replace(/^[\s,]+/, '');
  const kept = meterKindOf(rest) === 'unknown' ? rest : '';
  return kind === 'unknown' ? kept : [METER_KIND_WORDS[kind], kept].filter(Boolean).join(', ');
}
