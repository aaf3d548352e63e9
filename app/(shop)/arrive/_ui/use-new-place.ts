'use client';

import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import type { PlaceOption } from '@/app/(shop)/arrive/_ui/place-choice';
import { addPlaceHere } from '@/app/(shop)/arrive/actions';
import type { Problem } from '@/shared/result/answer';

/** A place that was named and is not in the book yet: `add` puts it there, and what is refused stands beside its field. */
export type NewPlace = {
  readonly add: () => Promise<PlaceOption | undefined>;
  readonly pending: boolean;
  readonly problem: Problem | undefined;
  readonly error: string | undefined;
};

export function useNewPlace(name: string, kind: 'rack' | 'shelf'): NewPlace {
  const { run, pending, problem } = useAct(addPlaceHere);
  const errors = useFieldErrors(problem, { name });
  async function add(): Promise<PlaceOption | undefined> {
    const answer = await run({ name, kind });
    return answer.ok ? { label: answer.answer.label, name: answer.answer.name, inside: null } : undefined;
  }
  return { add, pending, problem, error: errors.name };
}
