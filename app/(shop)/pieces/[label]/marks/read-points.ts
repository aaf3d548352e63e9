import { micrometres, type Point } from '@/shared/outline/point';
import { parseLength } from '@/shared/units/parse-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * Points typed one a line, along then across, left of the line above zero: `1200; -85`, or `47 1/4, -3 3/8`. A comma
 * parts the two only where there is no semicolon: it may be a decimal one.
 */
export function readPoints(
  text: string,
  prefer: UnitSystem,
): { ok: true; points: Point[] } | { ok: false; says: string } {
  const points: Point[] = [];
  for (const [nr, line] of text
    .split('\n')
    .map((each) => each.trim())
    .entries()) {
    if (line === '') continue;
    const parts = line.split(line.includes(';') ? /\s*;\s*/ : /\s*,\s*/);
    const [x, y] = parts.map((part) => signed(part, prefer));
    if (parts.length !== 2 || x === undefined || y === undefined) {
      const example = prefer === 'metric' ? '1200; -85' : '47 1/4; -3 3/8';
      return { ok: false, says: `Line ${nr + 1} is no point. Write along and across, for example ${example}.` };
    }
    points.push({ x, y });
  }
  return { ok: true, points };
}

function signed(text: string, prefer: UnitSystem): number | undefined {
  const isBelow = /^[-−]/.test(text);
  const read = parseLength(isBelow ? text.slice(1).trim() : text, { prefer });
  if (!read.ok) return undefined;
  return isBelow ? -micrometres(read.value) + 0 : micrometres(read.value);
}
