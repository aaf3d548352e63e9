import { err, ok, type Result } from '@/shared/result/result';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import { type Gs1Element, Gs1ElementList, type Gs1Fault } from '@/shared/scan-codes/gs1-element';

/** The value up to the next bare bracket, `\(` standing for a bracket in the data, and where each character was. */
function readValue(text: string, start: number): { value: string; places: number[]; end: number } {
  let value = '';
  const places: number[] = [];
  let at = start;
  while (at < text.length && text[at] !== '(') {
    const escaped = text[at] === '\\' && text[at + 1] === '(';
    places.push(at);
    value += escaped ? '(' : text.charAt(at);
    at += escaped ? 2 : 1;
  }
  places.push(at);
  return { value, places, end: at };
}

/**
 * Reads the form printed for people, each AI in brackets: `(01)09520123456788(10)ABC123`. A bracket that belongs to
 * the data is written `\(`. Values must fit their AI as they stand: `(17)9(90)217` is a use-by date too short.
 *
 * Errors: `empty-message`, `bracket-expected`, `bracket-not-closed`, `unknown-ai`, and those of `checkAiValue`.
 * Source: GS1 General Specifications 4.14 (human readable interpretation); the escape is that of the GS1 Barcode
 * Syntax Engine's bracketed element strings.
 */
export function readBracketed(text: string): Result<readonly Gs1Element[], Gs1Fault> {
  if (text === '') return err({ code: 'empty-message', at: 0 });
  const elements = new Gs1ElementList();
  let at = 0;
  while (at < text.length) {
    if (text[at] !== '(') return err({ code: 'bracket-expected', at });
    const close = text.indexOf(')', at);
    if (close < 0) return err({ code: 'bracket-not-closed', at });
    const entry = AI_DICTIONARY.get(text.slice(at + 1, close));
    if (!entry) return err({ code: 'unknown-ai', at: at + 1 });
    const { value, places, end } = readValue(text, close + 1);
    const added = elements.add(entry, value, at + 1, (index) => places[index] ?? end);
    if (!added.ok) return added;
    at = end;
  }
  return ok(elements.all());
}
