import { describe, expect, it } from 'vitest';
import { readMoisture } from '@/app/(shop)/pieces/read-moisture';

describe('a moisture reading', () => {
  it('reads as the meter shows it', () => {
    expect(['8.4', '8,4 %', '12', '100.0%', '250'].map(readMoisture)).toEqual([84, 84, 120, 1000, 2500]);
  });
  it('is refused where it is none', () => {
    expect(['', '8.45', '-3', '251', 'dry', '8 4', '1e1'].map(readMoisture)).toEqual(Array(7).fill(undefined));
  });
});
