/** What On hand shows, as its address keeps it: `?q=deep pour&show=wood&used=yes`. */
export type Ask = { query: string; show: 'materials' | 'wood'; withEmpty: boolean };

type Given = { q?: string | string[] | null; show?: string | string[] | null; used?: string | string[] | null };

const MOST_LETTERS = 100;
const first = (value: string | string[] | null | undefined) => (Array.isArray(value) ? value[0] : value) ?? '';

/** Reads the address; what does not read is as if it were not there. */
export function readAsk({ q, show, used }: Given): Ask {
  return {
    query: first(q).slice(0, MOST_LETTERS),
    show: first(show) === 'wood' ? 'wood' : 'materials',
    withEmpty: first(used) === 'yes',
  };
}

/** The address of what is shown; plain `/on-hand` for the first sight of it. */
export function hrefOfAsk({ query, show, withEmpty }: Ask): string {
  const params = new URLSearchParams();
  if (query.trim() !== '') params.set('q', query.trim());
  if (show === 'wood') params.set('show', show);
  if (withEmpty) params.set('used', 'yes');
  const text = params.toString();
  return text === '' ? '/on-hand' : `/on-hand?${text}`;
}
