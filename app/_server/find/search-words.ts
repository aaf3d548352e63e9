import type { WriteTransaction } from '@/prisma/open-book';

export type FoundKind = 'product' | 'lot' | 'piece' | 'place' | 'job';

/**
 * The words a text is found by: lower case, accents off, split at anything but letters and digits; a text of several
 * parts without spaces ("25F-118") is also found as one word.
 */
export function searchWords(text: string): string[] {
  const words = new Set<string>();
  for (const parts of chunksOf(text)) {
    for (const part of parts) words.add(part.slice(0, LONGEST));
    words.add(parts.join('').slice(0, LONGEST));
  }
  return [...words];
}

/** The same with each text of several parts as one word only: `wholeWords('Fell 25F-118')` is `['fell', '25f118']`. */
export function wholeWords(text: string): string[] {
  return [...new Set(chunksOf(text).map((parts) => parts.join('').slice(0, LONGEST)))];
}

const LONGEST = 40;

function chunksOf(text: string): string[][] {
  const plain = text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  return plain.split(/\s+/).flatMap((chunk) => {
    const parts = chunk.split(/[^\p{L}\p{N}]+/u).filter(Boolean);
    return parts.length ? [parts] : [];
  });
}

/** Makes a thing findable by exactly these texts. */
export async function indexWords(tx: WriteTransaction, kind: FoundKind, refId: number, texts: string[]): Promise<void> {
  await tx.searchWord.deleteMany({ where: { kind, refId } });
  const words = [...new Set(texts.flatMap(searchWords))];
  if (words.length) await tx.searchWord.createMany({ data: words.map((word) => ({ word, kind, refId })) });
}
