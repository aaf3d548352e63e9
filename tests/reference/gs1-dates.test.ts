import { describe, expect, it } from 'vitest';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import { checkAiValue } from '@/shared/scan-codes/check-ai-value';
import { gs1Date } from '@/shared/scan-codes/gs1-date';
import { TODAY } from '@/tests/support/scan-codes/today';

describe('GS1 dates', () => {
  // GS1 General Specifications 7.12, determination of century, as coded in gs1/interpretGS1scan 2503906; day 00 is the
  // last day of the month by the notes to AIs 11 to 17 (from memory).
  it.each([
    ['760101', '2076-01-01', 'day'],
    ['770101', '1977-01-01', 'day'],
    ['991231', '1999-12-31', 'day'],
    ['270200', '2027-02-28', 'month'],
    ['280200', '2028-02-29', 'month'],
    ['261200', '2026-12-31', 'month'],
  ])('%s read in 2026 is %s, to the %s', (yymmdd, date, precision) => {
    expect(gs1Date(yymmdd, TODAY)).toEqual({ date, precision });
  });

  // GS1 Barcode Syntax Dictionary, unit tests of lint_yymmd0.c and lint_yymmdd.c.
  it.each([
    ['17', '200229', undefined],
    ['17', '200200', undefined],
    ['17', '200230', 'bad-day'],
    ['17', '200431', 'bad-day'],
    ['17', '201310', 'bad-month'],
    ['17', '200132', 'bad-day'],
    ['17', '200010', 'bad-month'],
    ['17', '210229', 'bad-day'],
    ['7006', '200200', 'bad-day'],
    ['7006', '200229', undefined],
  ])('AI %s of %s: %s', (ai, value, code) => {
    const entry = AI_DICTIONARY.get(ai);
    expect(entry && checkAiValue(entry, value)?.code).toBe(code);
  });
});
