import type { TopNote } from '@/shared/wood/top-movement';

/** A note beside the movement of a top, as a sentence. Common practice. */
export function sayTopNote(note: TopNote): string {
  switch (note) {
    case 'fix-one-line-only':
      return 'Fix the top along one line only, commonly its middle, and let every other screw travel.';
    case 'breadboard-centre-glued-ends-slotted':
      return 'Glue a breadboard end at its middle alone and slot its outer pegs; its ends will stand proud or short with the seasons.';
    case 'batten-slotted-never-glued':
      return 'Slot a batten’s screws and never glue it across the grain, or the top will split or cup.';
    case 'cut-unknown':
      return 'How it was sawn is not known, so it counts as flat sawn, which moves most.';
  }
}
