import { CONDITIONS, type Condition } from '@/shared/shelf-life/types/container-facts';

/** A stock row's conditions as a list. */
export function splitConditions(text: string): Condition[] {
  return text.split(',').filter((each): each is Condition => (CONDITIONS as readonly string[]).includes(each));
}

/** Conditions as a stock row keeps them: each once, in alphabetical order. */
export function joinConditions(conditions: readonly Condition[]): string {
  return [...new Set(conditions)].sort().join(',');
}
