'use client';

import { useState } from 'react';
import type { Problem } from '@/shared/result/answer';

/**
 * The sentences to stand beside the fields of a form, each gone as soon as its field holds something else than what was
 * refused. A form that keeps marking what was put right is not believed.
 */
export function useFieldErrors(
  problem: Problem | undefined,
  values: Readonly<Record<string, unknown>>,
): Readonly<Record<string, string>> {
  const [refused, setRefused] = useState<{ problem: Problem; values: Readonly<Record<string, unknown>> }>();
  if (problem && refused?.problem !== problem) setRefused({ problem, values });
  if (!problem) return {};
  const then = refused?.problem === problem ? refused.values : values;
  return Object.fromEntries(Object.entries(problem.fields ?? {}).filter(([field]) => then[field] === values[field]));
}
