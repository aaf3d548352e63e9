import type { Ask } from '@/app/_server/pull/ask';
import { partOf } from '@/app/_server/pull/paired-part';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer } from '@/app/_server/stock/load-container';
import type { SqlReader } from '@/app/_server/stock/read-containers';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { judge } from '@/shared/shelf-life/judge';
import type { PairedPart } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** The other part, and how it stands on the day of use, mixed with this one. */
export type MixedWith = { label: string; part: 'A' | 'B'; verdict: Verdict };

/** The other part as the answer says it; null where there is none, or where it is known only as the last of its part. */
export async function mixedWith(
  tx: SqlReader,
  line: Pick<ContainerLine, 'label' | 'candidate'>,
  pairedWith: PairedPart | undefined,
  { purpose, dayOfUse }: Pick<Ask, 'purpose' | 'dayOfUse'>,
  today: CalendarDate,
): Promise<MixedWith | null> {
  const label = pairedWith && parseOwnLabel(pairedWith.label);
  const other = label?.ok ? await loadContainer(tx, label.value.code) : undefined;
  if (!pairedWith || !other) return null;
  const { system } = line.candidate.policy;
  // That the two do not belong together is said of the container in hand, once.
  const isPair = system && system.id === pairedWith.systemId && system.part !== pairedWith.part;
  const back = isPair ? partOf(system, line) : undefined;
  const verdict = judge({ ...other.candidate, purpose, dayOfUse, today, pairedWith: back });
  return { label: pairedWith.label, part: pairedWith.part, verdict };
}
