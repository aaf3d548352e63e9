import { err, ok, type Result } from '@/shared/result/result';
import { AI_DICTIONARY } from '@/shared/scan-codes/ai-dictionary';
import type { AiEntry } from '@/shared/scan-codes/ai-entry';
import { decodePercent } from '@/shared/scan-codes/decode-percent';
import { type Gs1Element, Gs1ElementList, type Gs1Fault } from '@/shared/scan-codes/gs1-element';

/** `not-a-digital-link` is a web address without a GS1 key in its path, which is no fault of a GS1 code. */
type DigitalLinkFault = Gs1Fault | { readonly code: 'not-a-digital-link'; readonly at: number };

type Piece = { readonly text: string; readonly at: number };

const isNumber = (text: string): boolean => /^[0-9]+$/.test(text);

function split(text: string, separator: string, offset: number): Piece[] {
  let at = offset;
  return text.split(separator).map((piece) => {
    const found = { text: piece, at };
    at += piece.length + separator.length;
    return found;
  });
}

/** The place of the rightmost segment that is a key, walking back two at a time over AIs that could qualify it. */
function rightmostKey(segments: readonly Piece[]): number | undefined {
  for (let place = segments.length - 2; place >= 0; place -= 2) {
    const name = segments[place]?.text ?? '';
    if (!isNumber(name)) return undefined;
    if (AI_DICTIONARY.get(name)?.qualifiers) return place;
  }
  return undefined;
}

/** True where the AIs after the key are a run of one of its alternatives, in its order, any left out. */
function inOrder(key: AiEntry, ais: readonly string[]): boolean {
  return (key.qualifiers ?? []).some((list) => {
    let from = 0;
    return ais.every((ai) => {
      const place = list.indexOf(ai, from);
      from = place + 1;
      return place >= 0;
    });
  });
}

function couldStandInPath(key: AiEntry, ais: readonly string[], more: string): boolean {
  return [...ais, more].some((_, place) => inOrder(key, [...ais.slice(0, place), more, ...ais.slice(place)]));
}

/**
 * Reads an uncompressed GS1 Digital Link URI, on id.gs1.org or any other stem.
 *
 * The scheme is http or https, all lower or all upper case. In the path the rightmost key wins, and its qualifiers
 * follow in their order; the query holds attributes; names that are not numbers, and the fragment, are ignored. `+` is
 * itself in the path and a space in the query. A GTIN in the path has fourteen digits.
 * Errors: `not-a-digital-link`, `bad-uri-character`, `unknown-ai`, `qualifier-order`, `not-an-attribute`,
 * `belongs-in-path`, `repeated`, `null-character`, and those of `checkAiValue`, each with its index.
 * Source: GS1 Digital Link Standard: URI Syntax 1.3.0, sections 4 and 5.
 * `https://id.gs1.org/01/09520123456788/10/ABC1?17=180426` gives AIs 01, 10 and 17.
 */
export function readDigitalLink(uri: string): Result<readonly Gs1Element[], DigitalLinkFault> {
  const scheme = /^(?:https?|HTTPS?):\/\//.exec(uri)?.[0];
  if (!scheme) return err({ code: 'not-a-digital-link', at: 0 });
  const pathAt = uri.indexOf('/', scheme.length);
  const domain = uri.slice(scheme.length, pathAt < 0 ? undefined : pathAt);
  if (pathAt < 0 || !/^[-A-Za-z0-9.:[\]]+$/.test(domain)) return err({ code: 'not-a-digital-link', at: scheme.length });
  const [beforeFragment = ''] = uri.split('#', 1);
  const [beforeQuery = ''] = beforeFragment.split('?', 1);
  const segments = split(beforeQuery.slice(pathAt + 1), '/', pathAt + 1);
  const trailingSlash = segments.length > 1 && segments.at(-1)?.text === '';
  const keyPlace = rightmostKey(segments);
  if (keyPlace === undefined) {
    const withoutSlash = trailingSlash ? rightmostKey(segments.slice(0, -1)) : undefined;
    if (withoutSlash === undefined) return err({ code: 'not-a-digital-link', at: pathAt });
    return err({ code: 'trailing-slash', at: beforeQuery.length - 1 });
  }
  const stray = uri.search(/[^-A-Za-z0-9._~:/?#[\]@!$&'()*+,;=%]/);
  if (stray >= 0) return err({ code: 'bad-uri-character', at: stray });
  return readParts(
    segments.slice(keyPlace),
    split(beforeFragment.slice(beforeQuery.length + 1), '&', beforeQuery.length + 1),
  );
}

function readParts(path: readonly Piece[], query: readonly Piece[]): Result<readonly Gs1Element[], Gs1Fault> {
  const elements = new Gs1ElementList();
  const take = (entry: AiEntry, name: Piece, value: Piece, plusIsSpace: boolean): Result<undefined, Gs1Fault> => {
    if (elements.has(entry.ai)) return err({ code: 'repeated', at: name.at, ai: entry.ai, title: entry.title });
    const { text, places } = decodePercent(value.text, plusIsSpace);
    const nothing = text.indexOf('\0');
    if (nothing >= 0) {
      return err({ code: 'null-character', at: value.at + (places[nothing] ?? 0), ai: entry.ai, title: entry.title });
    }
    return elements.add(entry, text, name.at, (index) => value.at + (places[index] ?? value.text.length));
  };
  const key = AI_DICTIONARY.get(path[0]?.text ?? '');
  if (!key) return err({ code: 'unknown-ai', at: path[0]?.at ?? 0 });
  const qualifiers: string[] = [];
  for (let place = 0; place + 1 < path.length; place += 2) {
    const [name, value] = [path[place], path[place + 1]];
    if (!name || !value) break;
    const entry = AI_DICTIONARY.get(name.text);
    if (!entry) return err({ code: 'unknown-ai', at: name.at });
    if (place > 0) qualifiers.push(entry.ai);
    if (!inOrder(key, qualifiers)) {
      return err({ code: 'qualifier-order', at: name.at, ai: entry.ai, title: entry.title });
    }
    const taken = take(entry, name, value, false);
    if (!taken.ok) return taken;
  }
  for (const pair of query) {
    const equals = pair.text.indexOf('=');
    const name = { text: equals < 0 ? pair.text : pair.text.slice(0, equals), at: pair.at };
    if (!isNumber(name.text)) continue;
    const entry = AI_DICTIONARY.get(name.text);
    if (!entry) return err({ code: 'unknown-ai', at: name.at });
    const about = { at: name.at, ai: entry.ai, title: entry.title };
    if (couldStandInPath(key, qualifiers, entry.ai)) return err({ code: 'belongs-in-path', ...about });
    if (!entry.attribute) return err({ code: 'not-an-attribute', ...about });
    const value = equals < 0 ? '' : pair.text.slice(equals + 1);
    const taken = take(entry, name, { text: value, at: pair.at + name.text.length + 1 }, true);
    if (!taken.ok) return taken;
  }
  return ok(elements.all());
}
