import type { Ask } from '@/app/_server/pull/ask';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { judge } from '@/shared/shelf-life/judge';
import type { PairedPart } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** What the judge needs to know besides the container and the ask. */
export type JudgeWith = {
  today: CalendarDate;
  /** The other part it is mixed with, as `pairedPart` found it. */
  pairedWith: PairedPart | undefined;
  /** Other containers of the product, to suggest from. */
  sisters?: ContainerLine[];
};

/** The verdict on a container for an ask. */
export function judgeAsk(
  line: ContainerLine,
  { purpose, asked, dayOfUse }: Pick<Ask, 'purpose' | 'asked' | 'dayOfUse'>,
  { today, pairedWith, sisters = [] }: JudgeWith,
): Verdict {
  const others = sisters.map((sister) => sister.candidate);
  return judge({ ...line.candidate, purpose, asked, dayOfUse, today, pairedWith, others });
}
