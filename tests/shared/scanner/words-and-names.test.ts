import { describe, expect, it } from 'vitest';
import { cameraTrouble, cameraTroubleWords } from '@/app/_ui/scanner/camera-trouble';
import { plainSymbology } from '@/app/_ui/scanner/plain-symbology';
import { showCode } from '@/app/_ui/scanner/show-code';
import { splitAimPrefix } from '@/app/_ui/scanner/split-aim-prefix';

describe('an AIM identifier in front of the data', () => {
  it('is taken off when it is assigned and something follows', () => {
    expect(splitAimPrefix(']C110AB\u001d217')).toEqual({ symbology: ']C1', text: '10AB\u001d217' });
  });

  it.each([']d2', '9501101530003', 'A]C1400', ']?1400', '](01)', ''])('otherwise every character stays: %s', (text) => {
    expect(splitAimPrefix(text)).toEqual({ text });
  });
});

describe('a decoder that does not tell the identifier', () => {
  it.each([
    ['CODE_128', ']C110AB', ']C1', '10AB'],
    ['CODE_128', 'AB', ']C0', 'AB'],
    ['DATA_MATRIX', '\u001d10AB', ']d2', '10AB'],
    ['DATA_MATRIX', '10AB', ']d1', '10AB'],
    ['UPC_A', '036000291452', ']E0', '0036000291452'],
    ['EAN_13', '9501101530003', ']E0', '9501101530003'],
    ['SOMETHING_NEW', 'x', '', 'x'],
  ])('%s with %j is read as %s and %s', (format, raw, symbology, text) => {
    expect(plainSymbology(format, raw)).toEqual({ symbology, text });
  });
});

it('a code is shown with a mark for what has no shape', () => {
  expect(showCode('10AB-12\u001d17261231\u0004')).toBe('10AB-12 ▏17261231·');
});

describe('a camera that does not open', () => {
  it.each([
    ['NotAllowedError', true, 'refused'],
    ['NotFoundError', true, 'none'],
    ['NotReadableError', true, 'busy'],
    ['TypeError', true, 'failed'],
    ['NotAllowedError', false, 'insecure'],
  ] as const)('with %s (secure: %s) is: %s', (name, secure, trouble) => {
    expect(cameraTrouble(name, secure)).toBe(trouble);
  });

  it('always leaves a way that still works, in words', () => {
    for (const trouble of ['refused', 'none', 'insecure', 'busy', 'unsupported', 'failed'] as const) {
      expect(cameraTroubleWords(trouble).todo).toMatch(/type the code|typing/i);
    }
  });
});
