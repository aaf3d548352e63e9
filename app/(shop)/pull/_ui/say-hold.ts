import type { PullAnswer } from '@/app/_server/pull/answer-pull';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { Reason, ReasonCode } from '@/shared/shelf-life/types/reason';

const HELD: readonly ReasonCode[] = ['recalled', 'quarantine', 'on-hold'];

/** What was written when it was held, to stand after the reason; empty for a reason that is no hold. */
export function sayHeldBecause(reason: Reason, { heldBecause }: Pick<PullAnswer, 'heldBecause'>): string {
  const why = 'scope' in reason ? heldBecause[reason.scope].trim() : '';
  return why ? ` Written: ${why}${/[.!?]$/.test(why) ? '' : '.'}` : '';
}

/** The pages on which its holds are released: the lot's where the lot is held, its own where it is. */
export function holdPages(
  reasons: readonly Reason[],
  line: Pick<PullAnswer['line'], 'label' | 'lotId' | 'lotCode'>,
): { scope: 'lot' | 'container'; href: string; words: string; key: string }[] {
  return reasons.flatMap((reason) => {
    if (!('scope' in reason)) return [];
    const { scope } = reason;
    return scope === 'lot'
      ? {
          scope,
          href: `/lots/${line.lotId}`,
          words: `Open the page of ${line.lotCode ? `lot ${line.lotCode}` : 'its lot'}`,
          key: 'Its lot’s page',
        }
      : {
          scope,
          href: `/containers/${line.label}`,
          words: `Open the page of ${printOwnLabel(line.label)}`,
          key: 'Its page',
        };
  });
}

/** Why a Stop can be overridden by nobody here, in a sentence; and whether it is a hold, to be released on its page. */
export function sayNever(because: readonly ReasonCode[]): { words: string; held: boolean } {
  const spoilt = because.filter((code) => !HELD.includes(code));
  if (spoilt.length === 0) {
    return {
      words: 'A hold is released first, on its page, by a decision with its reason. It cannot be used around.',
      held: true,
    };
  }
  if (spoilt.includes('wrong-system')) {
    return { words: 'Parts of different systems do not cure, now or later. No reason makes them.', held: false };
  }
  if (spoilt.includes('pair-failed')) {
    return {
      words:
        'The two lots failed together. Only a later test pour of the two that passes, on the page of either, lets them be mixed.',
      held: false,
    };
  }
  if (spoilt.includes('empty')) return { words: 'The book says there is nothing left in it to take.', held: false };
  return {
    words: 'What has gelled, skinned through or frozen does not come back. No reason makes it usable.',
    held: false,
  };
}
