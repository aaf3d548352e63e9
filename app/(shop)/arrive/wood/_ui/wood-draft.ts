import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';

/** The wood form as it stands. A photo cannot be kept, only that there was one. */
export type WoodDraft = { readonly wood: TypedWood; readonly newPlace: string; readonly hadPhoto: boolean };

const NAME = 'arrive-wood';
const VERSION = 2;

/** What this device fills in by itself is nobody's typing. */
const REMEMBERED: readonly string[] = ['placeLabel', 'meter'];

/** Whether a person has put anything into a form that began as `begun`. */
export function isTyped({ wood, newPlace, hadPhoto }: WoodDraft, begun: TypedWood): boolean {
  if (newPlace !== '' || hadPhoto) return true;
  return Object.entries(wood).some(
    ([name, value]) =>
      !REMEMBERED.includes(name) && JSON.stringify(value) !== JSON.stringify(begun[name as keyof TypedWood]),
  );
}

export const recallWood = (): WoodDraft | undefined => recallDraft<WoodDraft>(NAME, VERSION);

export const keepWood = (draft: WoodDraft | undefined): void => keepDraft(NAME, VERSION, draft);
