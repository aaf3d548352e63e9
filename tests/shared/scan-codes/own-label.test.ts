import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { mod37Check } from '@/shared/scan-codes/iso-7064-mod-37-2';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { OWN_LABEL_ALPHABET, OWN_LABEL_KINDS, type OwnLabelKind } from '@/shared/scan-codes/own-label';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { readScan } from '@/shared/scan-codes/read-scan';
import { toGtin14 } from '@/shared/scan-codes/to-gtin14';
import { TODAY } from '@/tests/support/scan-codes/today';

const KINDS = Object.values(OWN_LABEL_KINDS);
const ALPHANUMERICS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const mint = (kind: OwnLabelKind, serial: number): string => unwrap(mintOwnLabel(kind, serial)).code;
const read = (text: string) => readScan({ text }, { today: TODAY });

/** Every kind, serial numbers from the first, from the last and spread between. */
const SAMPLE = KINDS.flatMap((kind) => {
  const last = lastOf(kind);
  return Array.from({ length: 150 }, (_, step) => [step, last - step, Math.floor((last * step) / 150)])
    .flat()
    .map((serial) => mint(kind, serial));
});

function lastOf(kind: OwnLabelKind): number {
  const refused = mintOwnLabel(kind, Number.MAX_SAFE_INTEGER);
  if (refused.ok) throw new Error('A serial number without end was accepted');
  return refused.error.last;
}

/** The label as read, undefined where refused. */
function codeOf(text: string): string | undefined {
  const label = parseOwnLabel(text);
  return label.ok ? label.value.code : undefined;
}

describe('minting', () => {
  it('gives kind letter, five body characters and a check character, all from the alphabet', () => {
    const form = new RegExp(`^[CSBHFP][${OWN_LABEL_ALPHABET}]{6}$`);
    for (const code of SAMPLE) {
      expect(code).toMatch(form);
      expect(mod37Check(code.slice(0, -1))).toBe(code.slice(-1));
    }
  });

  it('leaves no serial number without a label, and gives no label twice', () => {
    const last = lastOf('slab');
    expect(last).toBeGreaterThan(1_700_000);
    const bodies = new Uint8Array(20 ** 5);
    for (let serial = 0; serial <= last; serial++) {
      const code = mint('slab', serial);
      let place = 0;
      for (let at = 1; at <= 5; at++) place = place * 20 + OWN_LABEL_ALPHABET.indexOf(code.charAt(at));
      bodies[place] = (bodies[place] ?? 0) + 1;
    }
    expect(bodies.reduce((most, count) => Math.max(most, count), 0)).toBe(1);
    expect(bodies.reduce((sum, count) => sum + count, 0)).toBe(last + 1);
  });

  it('keeps neighbours in number apart in at least three characters', () => {
    for (const kind of KINDS) {
      for (let serial = 0; serial < 20_000; serial++) {
        const [one, next] = [mint(kind, serial), mint(kind, serial + 1)];
        const differing = [...one].filter((character, at) => character !== next[at]).length;
        expect(differing).toBeGreaterThanOrEqual(3);
      }
    }
  });

  it('is the same for ever: labels already on the shelf keep their numbers', () => {
    expect([0, 1, 2, 1000].map((serial) => mint('container', serial))).toEqual([
      'C4V9TN3',
      'CW3N1M1',
      'C9JW46M',
      'C4KX9MW',
    ]);
    expect(KINDS.map((kind) => mint(kind, 7)[0]).join('')).toBe('CSBHFP');
  });

  it.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 1_800_000])('refuses serial number %d', (serial) => {
    expect(mintOwnLabel('board', serial)).toMatchObject({ ok: false, error: { code: 'serial-out-of-range' } });
  });
});

describe('reading', () => {
  it('round-trips from number through print to label, in the kind it was minted for', () => {
    fc.assert(
      fc.property(fc.constantFrom(...KINDS), fc.nat(1_729_000), (kind, serial) => {
        const label = unwrap(mintOwnLabel(kind, serial));
        expect(parseOwnLabel(label.code)).toEqual({ ok: true, value: { kind, code: label.code } });
        expect(parseOwnLabel(printOwnLabel(label.code))).toEqual({ ok: true, value: label });
        expect(read(printOwnLabel(label.code))).toEqual({ kind: 'own', label: kind, code: label.code });
      }),
    );
  });

  it('prints with a dash after the kind letter', () => {
    expect(printOwnLabel(unwrap(mintOwnLabel('container', 0)).code)).toBe('C-4V9TN3');
  });

  it.each([
    'c4v9tn3',
    ' C - 4V9 TN3 ',
    'C-4-V-9-T-N-3',
    'C\u20134V9\u2014TN3',
    'C\u00a04V9TN3\r\n',
    '\uff23\uff0d\uff14\uff36\uff19\uff34\uff2e\uff13',
    'C4U9TN3',
  ])('forgives case, spaces, dashes and full width: %j', (text) => {
    expect(codeOf(text)).toBe('C4V9TN3');
    expect(read(text)).toEqual({ kind: 'own', label: 'container', code: 'C4V9TN3' });
  });

  it('reads every look-alike as the character it stands for', () => {
    const pairs = ['O0', 'Q0', 'D0', 'o0', 'I1', 'L1', 'l1', 'i1', 'Z2', 'S5', 's5', 'G6', 'B8', 'UV', 'uV'];
    for (const [typed = '', meant = ''] of pairs.map((pair) => [...pair])) {
      const labels = SAMPLE.filter((code) => code.indexOf(meant, 1) > 0).slice(0, 20);
      expect(labels.length).toBeGreaterThan(0);
      for (const code of labels) expect(codeOf(code[0] + code.slice(1).replaceAll(meant, typed))).toBe(code);
    }
  });

  it.each([
    ['', 'empty', 0],
    [' - ', 'empty', 0],
    ['X4V9TN3', 'unknown-kind', 0],
    [' 44V9TN3', 'unknown-kind', 1],
    ['C-4V9AN3', 'character-outside-alphabet', 5],
    ['C-4V9*N3', 'character-outside-alphabet', 5],
    ['C-4V9TN', 'wrong-length', 7],
    ['C-4V9TN33', 'wrong-length', 8],
    ['C-4V9TN4', 'check-character', 7],
    ['S-4V9TN3', 'check-character', 7],
  ])('refuses %j: %s at %i', (text, code, at) => {
    expect(parseOwnLabel(text)).toMatchObject({ ok: false, error: { code, at } });
  });
});

describe('one slip', () => {
  it('a wrong character, any of 36 in any place, is refused or reads as the same label', () => {
    for (const code of SAMPLE) {
      for (let at = 0; at < code.length; at++) {
        for (const wrong of ALPHANUMERICS) {
          const read = codeOf(code.slice(0, at) + wrong + code.slice(at + 1));
          if (read !== undefined && read !== code) throw new Error(`${code}: ${wrong} at ${at} reads ${read}`);
        }
      }
    }
    expect(SAMPLE.length).toBe(2700);
  });

  it('two neighbours swapped are refused or read as the same label', () => {
    for (const code of SAMPLE) {
      for (let at = 0; at + 1 < code.length; at++) {
        const swapped = code.slice(0, at) + code[at + 1] + code[at] + code.slice(at + 2);
        const read = codeOf(swapped);
        if (read !== undefined && read !== code) throw new Error(`${code}: ${swapped} reads ${read}`);
        if (swapped !== code) expect(read).toBeUndefined();
      }
    }
  });

  it('a character lost or doubled is refused', () => {
    for (const code of SAMPLE) {
      for (let at = 0; at < code.length; at++) {
        expect(codeOf(code.slice(0, at) + code.slice(at + 1))).toBeUndefined();
        expect(codeOf(code.slice(0, at) + code[at] + code.slice(at))).toBeUndefined();
      }
    }
  });

  it('holds for every pair of digits in every place of the sum, not only in the sample', () => {
    // A check sum is linear: an error in one place changes it by (new - old) * weight, a swap by (b - a) * (w1 - w2).
    for (let place = 0; place < 7; place++) {
      const weight = 2 ** place % 37;
      const next = 2 ** (place + 1) % 37;
      for (let old = 0; old < 36; old++) {
        for (let wrong = 0; wrong < 36; wrong++) {
          if (old === wrong) continue;
          expect(((wrong - old) * weight) % 37).not.toBe(0);
          expect(((wrong - old) * (next - weight)) % 37).not.toBe(0);
        }
      }
    }
  });
});

describe('being mistaken', () => {
  it('no label is a GTIN or GS1 data, under any symbology that carries our labels', () => {
    for (const code of SAMPLE) {
      expect(toGtin14(code).ok).toBe(false);
      for (const symbology of [undefined, ']Q1', ']d1', ']C0', ']A0']) {
        const reading = readScan({ text: code, ...(symbology && { symbology }) }, { today: TODAY });
        expect(reading).toMatchObject({ kind: 'own', code });
      }
    }
  });

  it('look-alikes are forgiven only when typed: a decoder does not mistake letters', () => {
    expect(read('C4U9TN3').kind).toBe('own');
    expect(readScan({ text: 'C4U9TN3', symbology: ']C0' }, { today: TODAY })).toEqual({
      kind: 'unknown',
      code: 'C4U9TN3',
    });
  });

  it('a label that is nearly ours says so, with the place in the text as given', () => {
    expect(read('  C-4V9TN4')).toEqual({
      kind: 'unknown',
      code: 'C-4V9TN4',
      malformed: { looksLike: 'own', code: 'check-character', at: 9, params: {} },
    });
  });
});
