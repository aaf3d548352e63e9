import { describe, expect, it } from 'vitest';
import { pressed, STATION_KEYS } from '@/app/(shop)/pieces/[label]/measure/pressed';
import { parseLength } from '@/shared/units/parse-length';

describe('the keys beside the digits', () => {
  it.each([
    ['12', '3/8', '12 3/8'],
    ['12 3/8', '1/2', '12 1/2'],
    ['12 3/8"', '1/2', '12 1/2'],
    [`5' `, '1/4', `5' 1/4`],
    ['', '3/4', '3/4'],
    ['3/4', '1/8', '1/8'],
    ['112', '1/8', '112 1/8'],
    ['12 3/8', '+1/16', '12 7/16'],
    ['-3', '+1/16', '-3 1/16'],
    ['8', '′', `8' `],
    ['23', '″', '23"'],
    ['40', 'mm', '40 mm'],
    ['40 mm', 'mm', '40 mm'],
    ['40', '−', '-40'],
    ['-40', '−', '40'],
    ['40 mm', '+1/16', '41.5875 mm'],
    ['ab', '+1/16', 'ab'],
  ] as const)('%j and %s is %j', (text, key, expected) => {
    expect(pressed(text, key)).toBe(expected);
  });

  it('leave a number a length that reads, whichever of them is pressed', () => {
    for (const { key } of STATION_KEYS.imperial.filter((each) => each.key !== '−')) {
      expect(parseLength(pressed('12', key), { prefer: 'imperial' }).ok, key).toBe(true);
    }
  });
});
