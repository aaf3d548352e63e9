import { AI_DICTIONARY_TEXT } from '@/shared/scan-codes/ai-dictionary-text';
import type { AiComponent, AiEntry, ComponentType } from '@/shared/scan-codes/ai-entry';

const SPECIFICATION = /^\[?([NXYZ])(\.\.)?(\d+)\]?((?:,[a-z0-9]+)*)$/;

function readComponent(token: string): AiComponent | undefined {
  const parts = SPECIFICATION.exec(token);
  if (!parts) return undefined;
  const longest = Number(parts[3]);
  return {
    type: parts[1] as ComponentType,
    shortest: parts[2] ? 1 : longest,
    longest,
    optional: token.startsWith('['),
    checks: (parts[4] ?? '').split(',').filter(Boolean),
  };
}

function readLine(line: string): AiEntry[] {
  const hash = line.indexOf(' # ');
  const [range = '', ...tokens] = line.slice(0, hash).trim().split(/\s+/);
  const flags = /^[*?]+$/.test(tokens[0] ?? '') ? (tokens.shift() ?? '') : '';
  const valuesOf = (key: string): string[] =>
    tokens.filter((token) => token.startsWith(`${key}=`)).map((token) => token.slice(key.length + 1));
  const qualifiers = tokens.includes('dlpkey')
    ? [[]]
    : valuesOf('dlpkey')[0]
        ?.split('|')
        .map((list) => list.split(','));
  const [first = '', last = first] = range.split('-');
  const entries: AiEntry[] = [];
  for (let number = Number(first); number <= Number(last); number++) {
    entries.push({
      ai: String(number).padStart(first.length, '0'),
      title: line.slice(hash + 3),
      predefined: flags.includes('*'),
      attribute: flags.includes('?'),
      components: tokens.map(readComponent).filter((component) => component !== undefined),
      needs: valuesOf('req').map((rule) => rule.split(',').map((group) => group.split('+'))),
      excludes: valuesOf('ex').flatMap((list) => list.split(',')),
      ...(qualifiers && { qualifiers }),
    });
  }
  return entries;
}

/** Every AI of the published dictionary, by its digits: `AI_DICTIONARY.get('17')?.title` is `USE BY or EXPIRY`. */
export const AI_DICTIONARY: ReadonlyMap<string, AiEntry> = new Map(
  AI_DICTIONARY_TEXT.trim()
    .split('\n')
    .flatMap(readLine)
    .map((entry) => [entry.ai, entry]),
);

/**
 * The AI that begins at an index of an element string. No AI is the beginning of another, so at most one fits.
 * `aiAt('3103000195', 0)?.ai` is `3103`; undefined where the digits there are no published AI.
 */
export function aiAt(text: string, index: number): AiEntry | undefined {
  for (let length = 2; length <= 4; length++) {
    const entry = AI_DICTIONARY.get(text.slice(index, index + length));
    if (entry) return entry;
  }
  return undefined;
}
