import type { Part } from '@/app/_server/cuts/parts-of-cut';
import type { NewMark, PieceMarks } from '@/shared/outline/piece-marks';
import type { PieceFlag } from '@/shared/wood/piece';

type Whole = { readonly flags: readonly PieceFlag[]; readonly marks: PieceMarks };

const CRACKS: readonly string[] = ['check', 'split'];

/**
 * What is seen on a piece that was cut off. What is drawn on it is said of it; what was said of the slab and drawn nowhere
 * is said of all its pieces, for nobody knows where it is. The edges are those it still has.
 */
export function flagsOfPart(
  { flags, marks }: Whole,
  part: Pick<Part, 'marks' | 'edges' | 'laid'>,
  { bands, broke }: { bands: 'kept' | 'cut'; broke: boolean },
): PieceFlag[] {
  const isCrack = (mark: NewMark) => mark.is === 'end-check' || (mark.is === 'defect' && CRACKS.includes(mark.kind));
  const drawn = {
    checked: marks.endChecks.length > 0 || marks.defects.some(({ kind }) => CRACKS.includes(kind)),
    strapped: marks.straps.length > 0,
    broken: marks.defects.some(({ kind }) => kind === 'break'),
  };
  const here = {
    checked: part.marks.some(isCrack),
    strapped: part.marks.some(({ is }) => is === 'strap'),
    broken: part.marks.some((mark) => mark.is === 'defect' && mark.kind === 'break'),
  };
  const { left, right } = part.edges;
  const [wasLeft, wasRight] = [flags.includes('live-edge-left'), flags.includes('live-edge-right')];
  const live = {
    left: left && (part.laid.turned ? wasRight : wasLeft),
    right: right && (part.laid.turned ? wasLeft : wasRight),
  };
  const has: Record<PieceFlag, boolean> = {
    broken: here.broken || (flags.includes('broken') && !drawn.broken && !broke),
    strapped: here.strapped || (flags.includes('strapped') && !drawn.strapped && bands === 'kept'),
    checked: here.checked || (flags.includes('checked') && !drawn.checked),
    twisted: flags.includes('twisted'),
    'live-edge-left': live.left,
    'live-edge-right': live.right,
  };
  return (Object.keys(has) as PieceFlag[]).filter((flag) => has[flag]);
}
