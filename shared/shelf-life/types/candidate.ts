import type { ContainerFacts } from '@/shared/shelf-life/types/container-facts';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { LotFacts } from '@/shared/shelf-life/types/lot-facts';
import type { Policy } from '@/shared/shelf-life/types/policy';

/** Everything a verdict needs to know of one container, apart from the job. */
export type Candidate = {
  readonly policy: Policy;
  readonly lot: LotFacts;
  readonly container: ContainerFacts;
  readonly inspections: readonly Inspection[];
};
