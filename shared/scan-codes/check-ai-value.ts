import { AI_CHECKS } from '@/shared/scan-codes/ai-checks';
import type { AiComponent, AiEntry, ComponentType } from '@/shared/scan-codes/ai-entry';
import type { AiFault } from '@/shared/scan-codes/ai-fault';
import { CSET_82 } from '@/shared/scan-codes/cset-82';

const ALLOWED: Readonly<Record<ComponentType, ReadonlySet<string>>> = {
  N: new Set('0123456789'),
  X: new Set(CSET_82),
  Y: new Set('#-/0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'),
  Z: new Set('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_='),
};

/** Padding of base64url is optional; where it stands it must make up a multiple of four and close the text. */
const BASE64URL = /^(?:[A-Za-z0-9_-]{4})*(?:[A-Za-z0-9_-]{2}(?:==)?|[A-Za-z0-9_-]{3}=?)?$/;

function checkComponent(component: AiComponent, part: string): AiFault | undefined {
  const allowed = ALLOWED[component.type];
  for (let index = 0; index < part.length; index++) {
    if (!allowed.has(part.charAt(index))) return { code: 'invalid-character', at: index };
  }
  if (part.length < component.shortest) return { code: 'too-short', at: part.length };
  if (component.type === 'Z' && part.includes('=') && !BASE64URL.test(part)) {
    return { code: 'bad-base64-padding', at: part.indexOf('=') };
  }
  for (const name of component.checks) {
    const fault = AI_CHECKS[name]?.(part);
    if (fault) return fault;
  }
  return undefined;
}

/**
 * Checks an AI's value against the dictionary: characters, length, then the content checks of each component.
 *
 * Undefined means the value fits. Otherwise the first fault with its index in the value; `too-short` points just past
 * the end, `too-long` at the first character too many, and an empty value is `empty-value`.
 * Source: GS1 Barcode Syntax Dictionary, rules of its format specification.
 * For AI 17, `991332` gives `{ code: 'bad-month', at: 2 }`.
 */
export function checkAiValue(entry: AiEntry, value: string): AiFault | undefined {
  if (value === '') return { code: 'empty-value', at: 0 };
  let at = 0;
  for (const component of entry.components) {
    if (at === value.length && component.optional) return undefined;
    const part = value.slice(at, at + component.longest);
    const fault = checkComponent(component, part);
    if (fault) return { ...fault, at: fault.at + at };
    at += part.length;
  }
  return at < value.length ? { code: 'too-long', at } : undefined;
}
