import type { Measured } from '@/app/_server/shapes/measure-by-stations';

/** What there is to do about the marks of a piece that was just measured; empty where it has none. */
export function sayMarksAfter({ marks, marksOff }: Pick<Measured, 'marks' | 'marksOff'>): string {
  if (marks === 0) return '';
  if (marksOff > 0) {
    return `${marksOff === 1 ? 'One mark no longer lies' : `${marksOff} marks no longer lie`} on the wood: look at the drawing.`;
  }
  return marks === 1 ? 'Look whether its mark lies where it should.' : 'Look whether its marks lie where they should.';
}
