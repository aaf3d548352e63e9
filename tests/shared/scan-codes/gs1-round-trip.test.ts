import { describe, expect, it } from 'vitest';
import { AI_CHECKS } from '@/shared/scan-codes/ai-checks';
import { AI_DICTIONARY, aiAt } from '@/shared/scan-codes/ai-dictionary';
import { readScan } from '@/shared/scan-codes/read-scan';
import { buildBracketed, buildDigitalLink, buildElementString, type Pair } from '@/tests/support/scan-codes/build-gs1';
import { sampleAiValue } from '@/tests/support/scan-codes/sample-ai-value';
import { pick, seededRandom } from '@/tests/support/scan-codes/seeded-random';
import { TODAY } from '@/tests/support/scan-codes/today';

const ENTRIES = [...AI_DICTIONARY.values()];
const random = seededRandom(37);

function pairsOf(count: number): Pair[] {
  const chosen = new Map<string, Pair>();
  for (let step = 0; step < count; step++) {
    const entry = pick(random, ENTRIES);
    chosen.set(entry.ai, { entry, value: sampleAiValue(entry, random) });
  }
  return [...chosen.values()];
}

function elementsOf(text: string, symbology?: string): unknown {
  const reading = readScan({ text, ...(symbology && { symbology }) }, { today: TODAY });
  return reading.kind === 'gs1' ? reading.elements.map(({ ai, value }) => [ai, value]) : { text, reading };
}

const wanted = (pairs: readonly Pair[]): unknown => pairs.map(({ entry, value }) => [entry.ai, value]);

describe('the table of AIs', () => {
  it('no AI is the beginning of another, so that element strings read one way only', () => {
    for (const { ai } of ENTRIES) {
      expect(aiAt(ai, 0)?.ai).toBe(ai);
      for (let length = 2; length < ai.length; length++) expect(AI_DICTIONARY.has(ai.slice(0, length))).toBe(false);
    }
  });

  it('every AI has a title, components, and a check for every name it uses; no check is without use', () => {
    const used = new Set(ENTRIES.flatMap(({ components }) => components.flatMap(({ checks }) => checks)));
    expect([...used].sort()).toEqual(Object.keys(AI_CHECKS).sort());
    for (const { title, components } of ENTRIES) {
      expect(title).not.toBe('');
      expect(components.length).toBeGreaterThan(0);
    }
  });

  it('an AI of predefined length has only parts of fixed length', () => {
    for (const { predefined, components } of ENTRIES) {
      if (predefined) expect(components.every((part) => part.shortest === part.longest && !part.optional)).toBe(true);
    }
  });
});

describe('built, then read', () => {
  it('every AI alone, as element string and bracketed', () => {
    for (const entry of ENTRIES) {
      const pair = { entry, value: sampleAiValue(entry, random) };
      expect(elementsOf(buildElementString([pair]), ']C1')).toEqual(wanted([pair]));
      expect(elementsOf(buildBracketed([pair]))).toEqual(wanted([pair]));
    }
  });

  it('2,000 messages of up to eight elements, as element string and bracketed', () => {
    for (let round = 0; round < 2000; round++) {
      const pairs = pairsOf(1 + Math.floor(random() * 8));
      expect(elementsOf(buildElementString(pairs), pick(random, [']C1', ']d2', ']Q3', ']e0']))).toEqual(wanted(pairs));
      expect(elementsOf(`^${buildElementString(pairs).replaceAll('\u001d', '^')}`)).toEqual(wanted(pairs));
      expect(elementsOf(buildBracketed(pairs))).toEqual(wanted(pairs));
    }
  });

  it('2,000 Digital Link URIs, every key with a run of its qualifiers and some attributes', () => {
    const keys = ENTRIES.filter(({ qualifiers }) => qualifiers);
    for (let round = 0; round < 2000; round++) {
      const key = pick(random, keys);
      const list = pick(random, key.qualifiers ?? []).filter(() => random() < 0.7);
      const path = [key, ...list.flatMap((ai) => AI_DICTIONARY.get(ai) ?? [])].map((entry) => ({
        entry,
        value: sampleAiValue(entry, random),
      }));
      const inPath = new Set(path.map(({ entry }) => entry.ai));
      const mayQualify = new Set(key.qualifiers?.flat());
      const query = pairsOf(3).filter(
        ({ entry }) => entry.attribute && !inPath.has(entry.ai) && !mayQualify.has(entry.ai),
      );
      const stem = pick(random, ['https://id.gs1.org', 'http://example.com/some/stem', 'HTTPS://EXAMPLE.COM']);
      expect(elementsOf(buildDigitalLink(stem, path, query))).toEqual(wanted([...path, ...query]));
    }
  });
});
