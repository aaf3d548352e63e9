import { useCallback, useRef, useState } from 'react';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { askPull } from '@/app/(shop)/pull/_ui/ask-pull';
import { EMPTY_DRAFT, type PullDraft, questionOf, rememberDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import type { PullGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import type { Problem } from '@/shared/result/answer';

const UNREACHED: Problem = {
  code: 'unreached',
  what: 'The book could not be reached, so this is not looked up.',
  kept: 'What you scanned is kept here. Nothing is in the book yet.',
  todo: 'Come back into Wi-Fi: it asks again by itself, or press the key.',
};

/** The draft of this pull, kept on the device, and the way to ask the book about it. */
export function useQuestion() {
  const [draft, setDraft] = useState<PullDraft>(EMPTY_DRAFT);
  const [asking, setAsking] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const [fresh, setFresh] = useState(false);
  const turn = useRef(0);
  // What is typed while an answer is on its way stays: the answer is put into the latest draft, not into the one that asked.
  const latest = useRef<PullDraft>(EMPTY_DRAFT);

  const keep = useCallback((next: PullDraft) => {
    latest.current = next;
    setDraft(next);
    rememberDraft(next);
  }, []);

  /** Lets go of what is on the bench; an answer still on its way comes to nothing. */
  const drop = useCallback(() => {
    turn.current += 1;
    setAsking(false);
    setProblem(undefined);
    keep(EMPTY_DRAFT);
  }, [keep]);

  /** Asks the book; a later question makes an earlier answer come to nothing. `aloud` sounds and stamps the verdict. */
  const ask = useCallback(
    async (asked: PullDraft, goal: PullGoal, { aloud }: { aloud: boolean }) => {
      const mine = ++turn.current;
      const replyTo = questionOf(asked, goal);
      const next = asked.replyTo === replyTo ? asked : { ...asked, reply: undefined, repliedAt: undefined, replyTo };
      setProblem(undefined);
      setAsking(true);
      keep(next);
      const answered = await askPull(next, goal);
      if (mine !== turn.current) return;
      setAsking(false);
      if (answered === 'unreached' || !answered.ok) {
        giveFeedback('error');
        setFresh(false);
        setProblem(answered === 'unreached' ? UNREACHED : answered.problem);
        return;
      }
      const { reply } = answered;
      setFresh(aloud);
      keep({ ...latest.current, reply, repliedAt: Date.now() });
      if (!aloud) return;
      if (reply.kind === 'container' || reply.kind === 'piece') giveFeedback(reply.verdict.word);
      else if (reply.kind === 'nothing') giveFeedback('error');
    },
    [keep],
  );

  return { draft, latest, keep, drop, ask, asking, problem, setProblem, fresh };
}
