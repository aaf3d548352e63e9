import { describe, expect, it } from 'vitest';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { readScan } from '@/shared/scan-codes/read-scan';
import type { ScanReading } from '@/shared/scan-codes/scan-reading';
import { buildBracketed, buildDigitalLink, buildElementString } from '@/tests/support/scan-codes/build-gs1';
import { sampleAiValue } from '@/tests/support/scan-codes/sample-ai-value';
import { pick, seededRandom } from '@/tests/support/scan-codes/seeded-random';
import { TODAY } from '@/tests/support/scan-codes/today';

const random = seededRandom(1_000_003);
const ENTRIES = [...AI_DICTIONARY.values()];
const PIECES = [
  '\u001d',
  '^',
  '(',
  ')',
  '\\(',
  '01',
  '10',
  '17',
  '00',
  '/',
  '%',
  '%00',
  '?',
  '&',
  '=',
  '#',
  'https://',
  ']C1',
  '-',
  ' ',
  '\r\n',
  '\u0000',
  '\ud800',
  '\uff10',
  '\u241d',
  'e\u0301',
  '\u{1f600}',
];
const NONE = 'none';
const IDS = [NONE, NONE, NONE, ']C1', ']C0', ']d2', ']Q3', ']Q1', ']E0', ']E4', ']I1', ']zz', 'C1', ''];

const pair = () => {
  const entry = pick(random, ENTRIES);
  return { entry, value: sampleAiValue(entry, random) };
};

/** Texts that are right, for the changes to start from. */
const SEEDS = Array.from({ length: 3000 }, (_, round) => {
  const gtin = { entry: ENTRIES[1] ?? pair().entry, value: '09520123456788' };
  const pairs = [gtin, pair(), pair()];
  const label = mintOwnLabel('slab', round);
  return [
    buildElementString(pairs),
    buildBracketed(pairs),
    buildDigitalLink('https://example.com/a', [gtin], [pair()]),
    label.ok ? label.value.code : '',
    '4006381333931',
  ];
}).flat();

const anyCharacter = () => String.fromCharCode(Math.floor(random() * (random() < 0.9 ? 128 : 65_536)));

function change(text: string): string {
  const at = Math.floor(random() * (text.length + 1));
  const roll = random();
  if (roll < 0.25) return text.slice(0, at) + text.slice(at + 1);
  if (roll < 0.5) return text.slice(0, at) + pick(random, PIECES) + text.slice(at);
  if (roll < 0.75) return text.slice(0, at) + anyCharacter() + text.slice(at + 1);
  return text.slice(0, at);
}

function nextText(): string {
  if (random() < 0.1) return Array.from({ length: Math.floor(random() * 40) }, anyCharacter).join('');
  if (random() < 0.1) return Array.from({ length: Math.floor(random() * 12) }, () => pick(random, PIECES)).join('');
  let text = pick(random, SEEDS);
  for (let step = Math.floor(random() * 3); step > 0; step--) text = change(text);
  return text;
}

/** What every reading keeps to, whatever was read. A plain check: a million `expect`s would take minutes. */
function broken(text: string, reading: ScanReading<string>): string | undefined {
  if (reading.kind === 'gs1') {
    if (reading.elements.length === 0) return 'a message without elements';
    for (const { ai, at } of reading.elements) {
      if (!AI_DICTIONARY.has(ai) || at < 0 || at >= text.length) return `element ${ai} at ${at}`;
    }
    if (reading.gtin !== undefined && !/^[0-9]{14}$/.test(reading.gtin)) return `gtin ${reading.gtin}`;
  }
  if (reading.kind === 'gtin' && !/^[0-9]{14}$/.test(reading.gtin14)) return `gtin ${reading.gtin14}`;
  if (reading.kind === 'own' && reading.code.length !== 7) return `label ${reading.code}`;
  if (reading.kind === 'unknown' && reading.malformed) {
    const { at } = reading.malformed;
    if (!(at >= 0 && at <= text.length)) return `malformed at ${at}`;
  }
  return undefined;
}

describe('whatever is scanned', () => {
  it('1,000,000 random and mutated texts are each read, none throws, every place lies in the text', () => {
    const kinds = new Map<string, number>();
    for (let round = 0; round < 1_000_000; round++) {
      const text = nextText();
      const symbology = pick(random, IDS);
      const reading = readScan<string>(
        { text, ...(symbology !== NONE && { symbology }) },
        { today: TODAY, taught: (code) => (code.length === 5 ? code : undefined) },
      );
      const fault = broken(text, reading);
      if (fault) throw new Error(`${JSON.stringify(text)} behind ${symbology}: ${fault}`);
      kinds.set(reading.kind, (kinds.get(reading.kind) ?? 0) + 1);
    }
    // The run is worth something only if it reached every kind of reading often.
    for (const kind of ['gs1', 'gtin', 'own', 'taught', 'unknown']) expect(kinds.get(kind)).toBeGreaterThan(1000);
  });

  it.each([
    ['digits', '0'],
    ['keys', '0109520123456788'],
    ['separators', '\u001d'],
    ['carets', '^'],
    ['lots', '10A\u001d'],
    ['brackets', '('],
    ['bracketed lots', '(10)A'],
    ['escapes', '(10)\\('],
    ['slashes', '/01'],
    ['queries', '&17=260101'],
    ['percent signs', '%'],
    ['spaces', ' '],
    ['hyphens', '-'],
    ['full-width digits', '\uff10'],
    ['label letters', 'C-'],
  ])('the longest text of nothing but %s is read, in whichever dress', (_, piece) => {
    for (const front of [
      '',
      '^',
      ']C1',
      '(01)',
      'https://a/01/09520123456788?',
      'https://a/',
      'C-',
      '0109520123456788',
    ]) {
      const text = (front + piece.repeat(4096)).slice(0, 4096);
      for (const symbology of [undefined, ']C1', ']Q1', ']E0']) {
        const reading = readScan<string>({ text, ...(symbology && { symbology }) }, { today: TODAY });
        expect(broken(text, reading)).toBeUndefined();
      }
    }
  });
});
