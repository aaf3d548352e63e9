import type { Ask } from '@/app/(shop)/on-hand/ask';

type Counted = { total: number | null; more: boolean; cut: boolean };
type Show = Ask['show'];

/** How many there are, as far as they were counted: `500`, `more than 500`. */
export const sayTotal = (total: number, more: boolean) => `${more ? 'more than ' : ''}${total.toLocaleString('en')}`;

/** The same with what they are: `1 container`, `more than 500 pieces`. */
export function sayThings(total: number, more: boolean, show: Show): string {
  const thing = show === 'wood' ? 'piece' : 'container';
  return `${sayTotal(total, more)} ${thing}${total === 1 ? '' : 's'}`;
}

/** The line above the list; nothing where nothing is listed. A count that may fall short says so. */
export function sayCount({ total, more, cut }: Counted, { query, show }: Pick<Ask, 'query' | 'show'>): string {
  if (!total) return '';
  const said = sayThings(total, more, show);
  const count = `${said.charAt(0).toUpperCase()}${said.slice(1)}${query.trim() === '' ? '' : ` for “${query.trim()}”`}`;
  return cut ? `${count}${more ? '' : ', and maybe others'}: type more letters.` : count;
}

/** What to do where a search shows nothing here. */
export function sayWhatElse(
  { elsewhere, elsewhereMore, cut }: { elsewhere: number; elsewhereMore: boolean; cut: boolean },
  show: Show,
): string {
  if (elsewhere > 0) {
    return `The other shelf has ${sayThings(elsewhere, elsewhereMore, show === 'wood' ? 'materials' : 'wood')} for it.`;
  }
  if (cut) return 'It fits more than was looked through: type more letters.';
  return 'Try fewer letters, or only the beginning of a word. What was used up shows with the switch above.';
}
