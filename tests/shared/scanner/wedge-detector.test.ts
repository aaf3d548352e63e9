import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  FAST_MS,
  pressWedgeKey,
  SHORTEST_SCAN,
  WEDGE_IDLE,
  type WedgeDecision,
  type WedgeKey,
  wedgeWaking,
} from '@/app/_ui/scanner/wedge-detector';

type Press = Omit<WedgeKey, 'timeStamp' | 'target'> & { gap?: number; target?: WedgeKey['target'] };

/** Presses the keys, 10 ms apart unless told, and gives every decision. */
function press(keys: readonly Press[], startAt = 1000, from = WEDGE_IDLE): WedgeDecision[] {
  let state = from;
  let now = startAt;
  return keys.map(({ gap = 10, target = 'page', ...key }) => {
    now += gap;
    const heard = pressWedgeKey(state, { ...key, target, timeStamp: now });
    state = heard.state;
    return heard.decision;
  });
}

const type = (text: string, gap = 10): Press[] => [...text].map((key) => ({ key, gap }));
const enter: Press = { key: 'Enter' };
const scanned = (decisions: readonly WedgeDecision[]) =>
  decisions.flatMap((decision) => (decision.kind === 'scan' ? [decision.text] : []));

describe('a scanner that types is heard', () => {
  it('takes a fast run that ends with Enter', () => {
    expect(press([...type('S-2HM8KQ'), enter]).map((decision) => decision.kind)).toEqual([
      'start',
      'burst',
      'burst',
      'burst',
      'burst',
      'burst',
      'burst',
      'burst',
      'scan',
    ]);
    expect(scanned(press([...type('S-2HM8KQ'), enter]))).toEqual(['S-2HM8KQ']);
  });

  it('takes a fast run that ends with Tab', () => {
    expect(scanned(press([...type('4006'), { key: 'Tab' }]))).toEqual(['4006']);
  });

  it('takes Ctrl+M and Ctrl+J as the end key, which is how some scanners send CR and LF', () => {
    expect(scanned(press([...type('4006'), { key: 'm', ctrl: true }]))).toEqual(['4006']);
    expect(scanned(press([...type('4006'), { key: 'j', ctrl: true }]))).toEqual(['4006']);
  });

  it.each([3, 4])('needs four characters: %i', (length) => {
    expect(scanned(press([...type('12345'.slice(0, length)), enter]))).toHaveLength(length >= SHORTEST_SCAN ? 1 : 0);
  });

  it('holds the speed bound itself to be fast and one millisecond more to be slow', () => {
    expect(scanned(press([...type('ABCD', FAST_MS), { ...enter, gap: FAST_MS }]))).toEqual(['ABCD']);
    expect(scanned(press([...type('ABCD', FAST_MS + 1), { ...enter, gap: FAST_MS }]))).toEqual([]);
  });

  it('keeps shifted characters as the keyboard made them, whatever the Shift key adds to the time', () => {
    const keys = [...'AbC#1'].flatMap((key): Press[] =>
      /[A-Z#]/.test(key)
        ? [
            { key: 'Shift', gap: 20 },
            { key, gap: 20 },
          ]
        : [{ key }],
    );
    expect(scanned(press([...keys, enter]))).toEqual(['AbC#1']);
  });

  it('keeps characters made with AltGr, which arrive as Ctrl and Alt together', () => {
    expect(scanned(press([{ key: 'AltGraph' }, { key: ']', ctrl: true, alt: true }, ...type('C1400'), enter]))).toEqual(
      [']C1400'],
    );
  });
});

describe('the group separator of GS1 survives', () => {
  const tail = type('17261231');
  const head = type(']d210AB-12');

  it('as Ctrl+]', () => {
    const keys = [...head, { key: 'Control' }, { key: ']', ctrl: true }, ...tail, enter];
    expect(scanned(press(keys))).toEqual([']d210AB-12\u001d17261231']);
  });

  it('as Ctrl+] before anything else', () => {
    expect(scanned(press([{ key: ']', ctrl: true }, ...tail, enter]))).toEqual(['\u001d17261231']);
  });

  it('as Alt+029 on the number pad, with Num Lock on or off', () => {
    for (const names of [
      ['0', '2', '9'],
      ['Insert', 'ArrowDown', 'PageUp'],
    ]) {
      const digits = [0, 2, 9].map((digit, at): Press => ({ key: names[at] ?? '', code: `Numpad${digit}`, alt: true }));
      const keys = [...head, { key: 'Alt', alt: true }, ...digits, { key: 'Alt', up: true }, ...tail, enter];
      expect(scanned(press(keys))).toEqual([']d210AB-12\u001d17261231']);
    }
  });

  it('as the character itself', () => {
    expect(scanned(press([...head, { key: '\u001d' }, ...tail, enter]))).toEqual([']d210AB-12\u001d17261231']);
  });

  it('and so do RS and EOT of an ISO/IEC 15434 message', () => {
    const keys = [
      ...type('[)>'),
      { key: '^', ctrl: true },
      ...type('06'),
      { key: ']', ctrl: true },
      ...type('1P7'),
      { key: 'd', ctrl: true },
      enter,
    ];
    expect(scanned(press(keys))).toEqual(['[)>\u001e06\u001d1P7\u0004']);
  });
});

describe('a slow moment on a radio link', () => {
  const sixteen = '0109501101530003';
  const withStumbleAt = (at: number, gap: number) =>
    type(sixteen).map((key, index) => (index === at ? { ...key, gap } : key));

  it('is forgiven once in eight keys', () => {
    expect(scanned(press([...withStumbleAt(9, 80), enter]))).toEqual([sixteen]);
  });

  it('that breaks the run gives no code, because the tail alone would be a wrong one', () => {
    const decisions = press([...withStumbleAt(9, 200), enter]);
    expect(scanned(decisions)).toEqual([]);
    expect(decisions.at(-1)).toEqual({ kind: 'broken' });
  });

  it('is long over after half a second: the next scan is whole', () => {
    expect(scanned(press([...type('0109'), { key: '4', gap: 501 }, ...type('006381'), enter]))).toEqual(['4006381']);
  });
});

describe('what a person does is left alone', () => {
  it('a held key that repeats', () => {
    const held = Array.from({ length: 20 }, (): Press => ({ key: 'a', gap: 30, repeat: true }));
    expect(scanned(press([{ key: 'a' }, ...held, enter]))).toEqual([]);
  });

  it('an input method building characters', () => {
    expect(scanned(press([...type('abcdef').map((key) => ({ ...key, target: 'composing' as const })), enter]))).toEqual(
      [],
    );
  });

  it('shortcuts', () => {
    const keys: Press[] = ['c', 'v', 'a', 'z', 'd'].map((key) => ({ key, ctrl: true }));
    expect(press(keys).every((decision) => decision.kind === 'typing')).toBe(true);
    expect(press([...type('ab'), { key: 'r', meta: true }, enter]).map(({ kind }) => kind)).not.toContain('scan');
  });

  it('arrow and function keys end a run', () => {
    expect(scanned(press([...type('ABCD'), { key: 'ArrowLeft' }, enter]))).toEqual([]);
  });

  it('any typing in which at least one gap of every four is slower than a machine is never taken or held back as a scan', () => {
    const slow = fc.integer({ min: FAST_MS + 1, max: 900 });
    const any = fc.integer({ min: 1, max: 900 });
    // The slow gap stands at the same place of every four, so no four gaps in a row are all fast.
    const typist = fc
      .tuple(fc.array(fc.tuple(any, any, any, slow), { minLength: 1, maxLength: 15 }), fc.integer({ min: 0, max: 3 }))
      .map(([fours, from]) => fours.flat().slice(from));
    const keys = fc.constantFrom(...'abcXYZ019-/ .]', 'Enter', 'Tab');
    fc.assert(
      fc.property(typist, fc.infiniteStream(keys), (gaps, stream) => {
        const decisions = press(gaps.map((gap, at) => ({ key: stream.next().value ?? `${at}`, gap })));
        return decisions.every(({ kind }) => kind !== 'scan' && kind !== 'broken');
      }),
      { numRuns: 500 },
    );
  });

  it('never throws and stays consistent for any keys at any times', () => {
    const key = fc.record({
      key: fc.oneof(fc.string({ unit: 'grapheme', maxLength: 2 }), fc.constantFrom('Enter', 'Alt', 'Shift', 'Dead')),
      code: fc.constantFrom('KeyA', 'Numpad9', 'Digit2', ''),
      gap: fc.integer({ min: -5, max: 200 }),
      ctrl: fc.boolean(),
      alt: fc.boolean(),
      up: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(key, { maxLength: 60 }), (keys) => {
        for (const text of scanned(press(keys))) expect([...text].length).toBeGreaterThanOrEqual(SHORTEST_SCAN);
      }),
    );
  });
});

it('every code of four characters or more that a scanner sends comes through whole', () => {
  const code = fc.string({
    unit: fc.constantFrom(...'ABCxyz0123456789-+/.\u001d'),
    minLength: SHORTEST_SCAN,
    maxLength: 60,
  });
  fc.assert(
    fc.property(code, fc.integer({ min: 1, max: FAST_MS }), (text, gap) => {
      expect(scanned(press([...type(text, gap), { key: 'Enter', gap }]))).toEqual([text]);
    }),
  );
});

describe('while a page is waking', () => {
  it('refuses what may be the second half of a code, and takes the next whole one', () => {
    const waking = wedgeWaking(1000);
    expect(press([...type('K26-114'), enter], 1000, waking).at(-1)?.kind).toBe('broken');
    expect(press([{ key: 'K', gap: 300 }, ...type('26-114'), enter], 1000, waking).at(-1)?.kind).toBe('broken');
    expect(scanned(press([{ key: 'K', gap: 900 }, ...type('26-114'), enter], 1000, waking))).toEqual(['K26-114']);
  });
});
