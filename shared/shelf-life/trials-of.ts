import { heardInspections } from '@/shared/shelf-life/heard-inspections';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Trial } from '@/shared/shelf-life/types/reason';

/**
 * The test pours that a container or its lot was part of together with lots of the other part: what the other half of a
 * pair has to know of it. One stands unless this container was itself found bad afterwards: by an inspection of its own,
 * or together with another lot where nothing has passed since.
 */
export function trialsOf(candidate: Pick<Candidate, 'container' | 'inspections'>): readonly Trial[] {
  const heard = heardInspections(candidate);
  return heard.flatMap((one, at): Trial[] => {
    if (!one.together) return [];
    const since = heard.slice(at + 1);
    const foundBad = since.some(
      (later, nr) => !later.passed && (!later.together || !since.slice(nr + 1).some((pass) => pass.passed)),
    );
    return [{ id: one.together.trial, scope: one.scope, stands: !foundBad }];
  });
}
