import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Result } from '@/shared/result/result';
import type { AimSymbology } from '@/shared/scan-codes/aim-symbology';
import type { Gs1Element, Gs1Fault } from '@/shared/scan-codes/gs1-element';
import { gs1Message } from '@/shared/scan-codes/gs1-message';
import { dropFirst, type PlacedText, placeOf, without } from '@/shared/scan-codes/placed-text';
import { readBracketed } from '@/shared/scan-codes/read-bracketed';
import { readDigitalLink } from '@/shared/scan-codes/read-digital-link';
import { FNC1, readElementString } from '@/shared/scan-codes/read-element-string';
import { type Attempt, nearly } from '@/shared/scan-codes/scan-attempt';
import type { Gs1Reading } from '@/shared/scan-codes/scan-reading';

function fromElements(
  via: Gs1Reading['via'],
  placed: PlacedText,
  elements: Result<readonly Gs1Element[], Gs1Fault>,
  today: CalendarDate,
): Attempt<Gs1Reading> {
  const looksLike = via === 'digital-link' ? 'digital-link' : 'gs1';
  if (!elements.ok) return { malformed: nearly(looksLike, placed, elements.error) };
  const message = gs1Message(elements.value, today);
  if (!message.ok) return { malformed: nearly(looksLike, placed, message.error) };
  const asGiven = message.value.elements.map((element) => ({ ...element, at: placeOf(placed, element.at) }));
  return { reading: { kind: 'gs1', via, ...message.value, elements: asGiven } };
}

/** FNC1 written `^` in front means every `^` is one: the character is in no GS1 value. */
function withFnc1(placed: PlacedText): PlacedText {
  return placed.text.startsWith('^') ? { ...placed, text: placed.text.replaceAll('^', FNC1) } : placed;
}

/** Reads a text that its symbology, or an FNC1, declares to be element strings. */
export function asElementString(placed: PlacedText, today: CalendarDate): Attempt<Gs1Reading> {
  const marked = withFnc1(placed);
  const data = marked.text.startsWith(FNC1) ? dropFirst(marked, 1) : marked;
  return fromElements('element-string', data, readElementString(data.text), today);
}

/**
 * Reads GS1 out of a text that no symbology declares to be GS1: only what could hardly be anything else. Under a plain
 * symbology that is the bracketed form or a Digital Link URI.
 */
export function asUndeclaredGs1(
  placed: PlacedText,
  symbology: AimSymbology | undefined,
  today: CalendarDate,
): Attempt<Gs1Reading> {
  if (/^\([0-9]{2,}\)/.test(placed.text)) {
    const data = without(placed, (character) => character === ' ');
    return fromElements('bracketed', data, readBracketed(data.text), today);
  }
  if (/^https?:\/\//i.test(placed.text)) {
    const elements = readDigitalLink(placed.text);
    if (elements.ok) return fromElements('digital-link', placed, elements, today);
    const { error } = elements;
    return error.code === 'not-a-digital-link' ? {} : { malformed: nearly('digital-link', placed, error) };
  }
  if (symbology) return {};
  const opensWithFnc1 = placed.text.startsWith('^') || placed.text.startsWith(FNC1);
  if (opensWithFnc1 || (/^[0-9]/.test(placed.text) && placed.text.includes(FNC1))) {
    return asElementString(placed, today);
  }
  if (!/^0[012][0-9]{14}/.test(placed.text)) return {};
  const attempt = asElementString(placed, today);
  // A long number that merely begins like an AI is no broken GS1 message: its first key must have held.
  const keyEnd = placed.text.startsWith('00') ? 20 : 16;
  return attempt.malformed && attempt.malformed.at < placeOf(placed, keyEnd) ? {} : attempt;
}
