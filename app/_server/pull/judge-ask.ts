import type { Ask } from '@/app/_server/pull/ask';
import { pairedPart } from '@/app/_server/pull/paired-part';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { judge } from '@/shared/shelf-life/judge';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** The verdict on a container for an ask, as the book stands in `tx`. */
export async function judgeAsk(
  tx: Pick<WriteTransaction, 'entry' | '$queryRaw'>,
  line: ContainerLine,
  ask: Ask,
  today: CalendarDate,
  sisters: ContainerLine[] = [],
): Promise<Verdict> {
  return judge({
    ...line.candidate,
    purpose: ask.purpose,
    asked: ask.asked,
    dayOfUse: ask.dayOfUse,
    today,
    pairedWith: await pairedPart(tx, line, ask),
    others: sisters.map((sister) => sister.candidate),
  });
}
