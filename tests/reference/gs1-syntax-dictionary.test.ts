import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import bwipjs from 'bwip-js/node';
import { describe, expect, it } from 'vitest';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import type { AiEntry } from '@/shared/scan-codes/ai-entry';
import { checkAiValue } from '@/shared/scan-codes/check-ai-value';
import { sampleAiValue } from '@/tests/support/scan-codes/sample-ai-value';
import { pick, seededRandom } from '@/tests/support/scan-codes/seeded-random';

// The library's own copy of the dictionary (PostScript source, BWIPP 2026-05-28), extracted and maintained by others.
const source = readFileSync(
  path.join(path.dirname(createRequire(import.meta.url).resolve('bwip-js/node')), '..', 'barcode.ps'),
  'utf8',
);
const dictionarySource = source.slice(source.indexOf('/gs1syntax <<'), source.indexOf('/aifixed <<'));

type Copied = { parts: string[]; excludes: string[]; needs: string[][][]; qualifiers?: string[][]; attribute: boolean };

/** `[ [ (22) (10) ] [ (235) ] ]` as nested arrays. */
const nested = (text: string): string[][][] =>
  JSON.parse(
    text
      .replace(/\(([^)]*)\)/g, '"$1"')
      .replaceAll('" "', '","')
      .replace(/"\s+"/g, '","')
      .replace(/\]\s+\[/g, '],['),
  );

function copiedDictionary(): Map<string, Copied> {
  const copied = new Map<string, Copied>();
  for (const block of dictionarySource.split(/^ {8}<<$/m).slice(1)) {
    const parts = [
      ...block.matchAll(/\/cset \/(\w)\s+\/min\s+(\d+)\s+\/max\s+(\d+)\s+\/opt (\w+)\s+\/linters \[(.*?)\]/g),
    ].map(([, type, least, most, optional, linters = '']) =>
      `${type} ${least} ${most} ${optional} ${linters.trim().replaceAll('/lint', '')}`.trim(),
    );
    const excludes = [...(/\/ex\s+\[(.*)\]/.exec(block)?.[1] ?? '').matchAll(/\((\w+)\)/g)].map(([, ai = '']) => ai);
    const needs = /\/req\s+(\[.*\])/.exec(block)?.[1];
    const keys = /\/dlpkey\s+(\[.*\])/.exec(block)?.[1];
    const lists = keys && (JSON.stringify(nested(keys)) === '[]' ? [[]] : (nested(keys) as unknown as string[][]));
    for (const [, ai = ''] of block.matchAll(/\((\d+)\) exch dup/g)) {
      copied.set(ai, {
        parts,
        excludes,
        needs: needs ? nested(needs) : [],
        attribute: !block.includes('/dlattr false'),
        ...(lists && { qualifiers: lists }),
      });
    }
  }
  return copied;
}

const COPY = copiedDictionary();
const FIXED_PREFIXES = new Set(
  [
    ...(source
      .slice(source.indexOf('/aifixed <<'))
      .split('forall')[0]
      ?.replace(/%.*/g, '')
      .matchAll(/\((\d\d)\)/g) ?? []),
  ].map(([, prefix]) => prefix),
);

// Where the dictionary has moved on since that copy was taken: AI 03 joins associations, pairs are named together.
const NEWER_NEEDS = /^(20|24[013]|25[01]|37|392\d|42[234567]|7003|7004|701[01]|702[012]|8008|8009|8012|8030)$/;
const NEWER_EXCLUDES = /^(03|7240|8006|8026)$/;

describe('GS1 Barcode Syntax Dictionary, against the copy in the library bwip-js', () => {
  it('names the same AIs, all 541 of them', () => {
    expect([...AI_DICTIONARY.keys()].sort()).toEqual([...COPY.keys()].sort());
    expect(AI_DICTIONARY.size).toBe(541);
  });

  it.each([...AI_DICTIONARY.values()].map((entry) => [entry.ai, entry] as const))('AI %s agrees', (ai, entry) => {
    const copy = COPY.get(ai);
    expect(
      entry.components.map(({ type, shortest, longest, optional, checks }) =>
        `${type} ${shortest} ${longest} ${optional} ${checks.join(' ')}`.trim(),
      ),
    ).toEqual(copy?.parts);
    expect(entry.predefined).toBe(FIXED_PREFIXES.has(ai.slice(0, 2)));
    expect(entry.attribute).toBe(copy?.attribute);
    expect(entry.qualifiers).toEqual(copy?.qualifiers);
    if (NEWER_NEEDS.test(ai)) expect(entry.needs).not.toEqual(copy?.needs);
    else expect(entry.needs).toEqual(copy?.needs);
    if (NEWER_EXCLUDES.test(ai)) expect(entry.excludes).not.toEqual(copy?.excludes);
    else expect([...entry.excludes].sort()).toEqual([...(copy?.excludes ?? [])].sort());
  });
});

/** True where the library accepts the value. Associations are left out; its complaint must be about the value. */
function libraryAccepts(entry: AiEntry, value: string): boolean {
  try {
    bwipjs.raw({ bcid: 'gs1datamatrix', text: `(${entry.ai})${value}`, lintreqs: false } as never);
    return true;
  } catch (error) {
    if (!/bwipp\.(GS1|invalidPos|position|end)/.test(String(error))) throw error;
    return false;
  }
}

const MUTATIONS = '0123456789AZaz-_/!%=+? ';

function mutate(value: string, random: () => number): string {
  const at = Math.floor(random() * value.length);
  const character = pick(random, MUTATIONS);
  const roll = random();
  if (roll < 0.2) return value.slice(0, at) + value.slice(at + 1);
  if (roll < 0.4) return value.slice(0, at) + character + value.slice(at);
  return value.slice(0, at) + character + value.slice(at + 1);
}

/** Currency 924 is in the dictionary's list since 2024 and not yet in the library's. */
const newerCurrency = (entry: AiEntry, value: string): boolean =>
  entry.components[0]?.checks.includes('iso4217') === true && value.startsWith('924');

describe('values, against the linting of the library bwip-js', () => {
  const random = seededRandom(20_260_615);
  const bySpecification = new Map(
    [...AI_DICTIONARY.values()].map((entry) => [JSON.stringify(entry.components), entry] as const),
  );

  it.each([...bySpecification.values()].map((entry) => [entry.ai, entry] as const))(
    'AI %s accepts and refuses the same values',
    (_, entry) => {
      for (let round = 0; round < 12; round++) {
        // An opening bracket would begin another AI in the library's input.
        const good = sampleAiValue(entry, random).replaceAll('(', ')');
        expect([good, checkAiValue(entry, good)]).toEqual([good, undefined]);
        expect([good, libraryAccepts(entry, good)]).toEqual([good, true]);
        for (let change = 0; change < 4; change++) {
          const changed = mutate(good, random);
          if (changed === '' || newerCurrency(entry, changed)) continue;
          expect([changed, checkAiValue(entry, changed) === undefined]).toEqual([
            changed,
            libraryAccepts(entry, changed),
          ]);
        }
      }
    },
  );
});
