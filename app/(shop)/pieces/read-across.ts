import type { Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type LengthError, parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A length to either side of the chalk line: `120`, `120 left` and `left 120` lie left of it, `-120` and `120 right` right of it. Undefined where nothing is typed. */
export function readAcross(text: string, prefer: UnitSystem): Result<Nanometres, LengthError> | undefined {
  const typed = text.trim();
  if (typed === '') return undefined;
  const isRight = /^[-−–]|\bright\b/i.test(typed);
  const length = parseLength(typed.replace(/^[-−–]\s*/, '').replace(/\s*\b(?:left|right)\b\s*/i, ''), { prefer });
  return length.ok && isRight ? { ok: true, value: nanometres(-length.value) } : length;
}
