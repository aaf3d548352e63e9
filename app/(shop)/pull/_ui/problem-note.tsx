'use client';

import { useEffect, useRef } from 'react';
import { PlainError } from '@/app/_ui/plain-error';
import type { Problem } from '@/shared/result/answer';

/** What went wrong with a press, brought into sight: the key that was pressed may stand far from it. */
export function ProblemNote({ problem }: { problem: Problem | undefined }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (problem) place.current?.scrollIntoView({ block: 'center' });
  }, [problem]);
  return (
    <div ref={place}>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
    </div>
  );
}
