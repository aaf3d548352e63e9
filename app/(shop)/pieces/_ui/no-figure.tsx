import { ReasonList } from '@/app/_ui/verdict/reason-list';
import type { Said } from '@/app/(shop)/pieces/say-trouble';

/** Says that a number cannot be given, and what to do instead. */
export function NoFigure({ said, label }: { said: Said; label: string }) {
  return (
    <ReasonList label={label} reasons={[{ id: 'no-figure', word: 'care', sentence: said.says, toDo: said.todo }]} />
  );
}
