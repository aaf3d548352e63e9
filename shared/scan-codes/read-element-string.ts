import { err, ok, type Result } from '@/shared/result/result';
import { aiAt } from '@/shared/scan-codes/ai-dictionary';
import { type Gs1Element, Gs1ElementList, type Gs1Fault } from '@/shared/scan-codes/gs1-element';

/** FNC1 as a decoder sends it inside the data: the control character GS. */
export const FNC1 = '\u001d';

/**
 * Reads GS1 element strings as they come from a symbol, without its leading FNC1.
 *
 * An AI of predefined length takes that many characters; any other runs to the next FNC1 or the end. An FNC1 more than
 * needed, after a predefined length or at the end, is tolerated. Mandatory and excluded pairings are not looked at
 * here: they are judged over every symbol on the item.
 * Errors: `empty-message`, `unknown-ai`, and those of `checkAiValue` and of `Gs1ElementList`, each with its index.
 * Source: GS1 General Specifications 7.8 (processing of data from a GS1 symbology).
 * `readElementString('0112312312312333' + '10ABC123')` gives AI 01 and AI 10.
 */
export function readElementString(text: string): Result<readonly Gs1Element[], Gs1Fault> {
  if (text === '') return err({ code: 'empty-message', at: 0 });
  const elements = new Gs1ElementList();
  let at = 0;
  while (at < text.length) {
    const entry = aiAt(text, at);
    if (!entry) return err({ code: 'unknown-ai', at });
    const start = at + entry.ai.length;
    const separator = text.indexOf(FNC1, start);
    let end = separator < 0 ? text.length : separator;
    if (entry.predefined) {
      const length = entry.components.reduce((sum, component) => sum + component.longest, 0);
      end = Math.min(end, start + length);
    }
    const added = elements.add(entry, text.slice(start, end), at, (index) => start + index);
    if (!added.ok) return added;
    at = text[end] === FNC1 ? end + 1 : end;
  }
  return ok(elements.all());
}
