import type { SizeColumns } from '@/app/_server/shapes/sizes-of-outline';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';

/** `2,400 mm long, 590 to 700 mm wide`, as the history says what was measured. */
export function saySizes({ lengthNm, widthStartNm, widthMiddleNm, widthEndNm }: SizeColumns, units: string): string {
  const say = (length: bigint) =>
    printLength(nanometres(length), { prefer: units === 'metric' ? 'metric' : 'imperial', style: 'inches' });
  const widths = [widthStartNm, widthMiddleNm, widthEndNm].sort((a, b) => (a < b ? -1 : 1));
  const [narrow = 0n, , wide = 0n] = widths;
  return `${say(lengthNm)} long, ${narrow === wide ? '' : `${say(narrow)} to `}${say(wide)} wide`;
}
