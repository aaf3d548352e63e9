import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import { type Card, DATE_NAMES, DATE_WORDS, datesOnLabel } from '@/app/(shop)/arrive/card';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';

/** What a scan did while a card was open. `said` is the sentence for it; the card changes only where one is given. */
export type ScanOnCard =
  | { readonly kind: 'changed'; readonly card: Card; readonly said: string }
  | { readonly kind: 'refused'; readonly said: string }
  /** Something that is none of this card's business: it is shown beside the card, which stays. */
  | { readonly kind: 'other' };

/**
 * What a second scan means while the arrival card is open: the lot or date label of the same container fills in, the same
 * product again is one more of them, a place says where they go, and anything else leaves the card as it is.
 */
export function scanOnCard(card: Card, scanned: Scanned, order: DateOrder): ScanOnCard {
  if (scanned.kind === 'place') {
    return {
      kind: 'changed',
      card: { ...card, placeLabel: scanned.label, newPlace: '' },
      said: `It goes to ${scanned.name}.`,
    };
  }
  if (scanned.kind === 'label-without-product') return withLabel(card, scanned.says, { isContainer: false, order });
  if (scanned.kind !== 'product' || scanned.product.productId !== card.product.productId) return { kind: 'other' };
  if (scanned.product.packageSize !== card.product.packageSize) {
    return {
      kind: 'refused',
      said: 'That is the same product in another size. Book these in first, then scan it again.',
    };
  }
  return withLabel(card, scanned.says, { isContainer: true, order });
}

function withLabel(
  card: Card,
  says: LabelSays,
  { isContainer, order }: { isContainer: boolean; order: DateOrder },
): ScanOnCard {
  if (says.serial && card.serials.includes(says.serial)) {
    return { kind: 'refused', said: 'That one is counted already: its serial number was read before.' };
  }
  if (says.lot && card.lot.trim() && says.lot !== card.lot.trim()) {
    return {
      kind: 'refused',
      said: `That is another lot, ${says.lot}. Book lot ${card.lot.trim()} in first, then scan it again.`,
    };
  }
  const found = datesOnLabel(says, order);
  for (const name of DATE_NAMES) {
    const here = card.dates[name];
    const there = found[name];
    if (there && here.text && here.fromCode && here.text !== there.text) {
      const said = `This label says ${DATE_WORDS[name].toLowerCase()} ${there.text}, the one before ${here.text}. Read both, and correct the card.`;
      return { kind: 'refused', said };
    }
  }
  const lot = card.lot.trim() || says.lot || '';
  // What a person typed is not overwritten by a code.
  const news = DATE_NAMES.filter((name) => found[name] && !card.dates[name].text);
  const dates = { ...card.dates, ...Object.fromEntries(news.map((name) => [name, found[name]])) };
  const serials = says.serial ? [...card.serials, says.serial] : card.serials;
  const isNews = lot !== card.lot.trim() || news.length > 0;
  if (isNews) {
    const parts = [
      lot !== card.lot.trim() ? `lot ${lot}` : '',
      ...news.map((name) => `${DATE_WORDS[name].toLowerCase()} ${dates[name].text}`),
    ];
    return {
      kind: 'changed',
      card: { ...card, lot, dates, serials },
      said: `Read from the label: ${parts.filter(Boolean).join(', ')}.`,
    };
  }
  if (!isContainer) return { kind: 'refused', said: 'That label says nothing new.' };
  const before = /^\d+$/.test(card.count.trim()) ? Number(card.count) : 0;
  if (before >= MOST_AT_ONCE)
    return { kind: 'refused', said: `${MOST_AT_ONCE} at once is the most. Book these in first.` };
  const count = String(before + 1);
  return { kind: 'changed', card: { ...card, count, serials }, said: `One more: ${count} now.` };
}
