import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import type { Gs1Element } from '@/shared/scan-codes/gs1-element';

/**
 * What the elements read so far lack or should not have side by side. `needs` is met by any one of its groups, all of
 * whose AIs must be present.
 */
export type PairingNote =
  | { readonly code: 'needs'; readonly ai: string; readonly anyOf: readonly (readonly string[])[] }
  | { readonly code: 'excludes'; readonly ai: string; readonly other: string };

/** The elements' AIs under every name a rule may call them by: `3103` is also `310n` and `31nn`. */
function byPattern(elements: readonly Gs1Element[]): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { ai } of elements) {
    for (const name of ai.length === 4 ? [ai, `${ai.slice(0, 3)}n`, `${ai.slice(0, 2)}nn`] : [ai]) {
      names.set(name, [...(names.get(name) ?? []).slice(0, 1), ai]);
    }
  }
  return names;
}

/**
 * The mandatory and the excluded pairings that these elements break. They are notes and not errors, since a label may
 * carry the rest of its data in a second symbol, and only all of them together are judged.
 *
 * Source: GS1 General Specifications 4.13 (data relationships); GS1 Barcode Syntax Dictionary, `req` and `ex`.
 * For AI 10 alone: `{ code: 'needs', ai: '10', anyOf: [['01'], ['02'], ['03'], ['8006'], ['8026']] }`.
 */
export function pairingNotes(elements: readonly Gs1Element[]): readonly PairingNote[] {
  const present = byPattern(elements);
  const notes: PairingNote[] = [];
  for (const { ai } of elements) {
    const entry = AI_DICTIONARY.get(ai);
    for (const anyOf of entry?.needs ?? []) {
      if (!anyOf.some((group) => group.every((name) => present.has(name)))) notes.push({ code: 'needs', ai, anyOf });
    }
    for (const pattern of entry?.excludes ?? []) {
      const other = present.get(pattern)?.find((found) => found !== ai);
      if (other) notes.push({ code: 'excludes', ai, other });
    }
  }
  return notes;
}
