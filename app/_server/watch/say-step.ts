import type { UndoneStep } from '@/app/_server/watch/undone-steps';
import { STEP_WORDS } from '@/shared/timeline/say-step';

/** What a step is, in a few words: its own name, or its kind; of a pour with the pour's, of a coat with the finish; with its part. */
export function sayStep({ kind, name, pour, part, product, coatNr }: UndoneStep): string {
  const own = name.trim() || [STEP_WORDS[kind], coatNr ?? ''].filter(Boolean).join(' ');
  const of = pour && !own.includes(pour) ? `, ${pour}` : product && !own.includes(product) ? `, ${product}` : '';
  return `${own}${of}${part && !own.includes(part) ? `, ${part}` : ''}`;
}
