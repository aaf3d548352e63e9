import { assess } from '@/shared/shelf-life/assess';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Suggestion } from '@/shared/shelf-life/types/suggestion';
import type { JudgeInput, Verdict } from '@/shared/shelf-life/types/verdict';

/**
 * Whether a container may go into a job on the day of use: Use, Care or Stop, with every limit, every reason worst first,
 * whether a Stop may be overridden, and what to take instead. A day of use that has passed is judged for today, for this
 * container and for the others alike. One pure function of its input; it reads no clock.
 *
 * Stop: on hold, in quarantine or recalled · gelled, skinned through, or frozen where freezing ruins · past the governing
 * limit, date unknown or inspection failed, for a client's piece · parts that are not A and B of one system · for a client's or an own
 * piece, two lots that failed their test pour together · empty.
 * Care: the limit within the care window after the day · extended by inspection · opened day guessed · opened life
 * unknown · a date not confirmed · crystals, haze, settling, darkening, thawing · stored out of its temperatures · facts
 * that contradict · a day of use that is past · less left than asked · and for an own piece or a test, past, unknown or
 * failed. Use: none of these; it still names the governing limit and the days left.
 *
 * `instead` is there when `others` were given and the word is not Use. For a Stop it replaces this container; when this
 * one is only short it takes all of it and covers the rest, unless colour shows, the rest would mix lots, and one other
 * lot can give the whole; for another Care it is there only when the others reach with Use alone, since one care is no
 * better than another.
 *
 * Example: best before 12 Dec 2026, a client's pour with its last lift on 19 Dec: Stop, `past-limit`, `daysPast: 7`.
 */
export function judge(input: JudgeInput): Verdict {
  const verdict = assess(input);
  const instead = insteadOf(input, verdict);
  return instead ? { ...verdict, instead } : verdict;
}

function insteadOf(input: JudgeInput, verdict: Verdict): Suggestion | undefined {
  const { others, asked, policy, lot, container, dayOfUse, today, purpose, pairedWith } = input;
  if (!others || asked === 0 || verdict.word === 'use') return undefined;
  const candidates = others.filter((one) => one.container.id !== container.id && isAlike(one, input));
  const { colourShows } = policy;
  const common = { candidates, dayOfUse, today, purpose, colourShows, lotId: lot.id, pairedWith };

  const isShort = verdict.reasons.some((reason) => reason.code === 'short');
  const whole = suggestContainers({ ...common, asked });
  if (verdict.word === 'care' && isShort && asked !== undefined) {
    const rest = suggestContainers({ ...common, asked: asked - container.left, lotInUse: true });
    const keepsToOneLot = rest.why === 'one-lot' || rest.why === 'first-to-expire';
    return !keepsToOneLot && whole.reaches && whole.why === 'one-lot' ? whole : { ...rest, withThis: container.left };
  }
  const allUse = whole.reaches && whole.containers.every((one) => one.word === 'use');
  return verdict.word === 'stop' || allUse ? whole : undefined;
}

/** Another part, or another system, is no replacement; a container of the wrong system is replaced by one that fits. */
function isAlike({ policy }: Candidate, { policy: own, pairedWith }: JudgeInput): boolean {
  if (pairedWith) return true;
  return policy.system?.id === own.system?.id && policy.system?.part === own.system?.part;
}
