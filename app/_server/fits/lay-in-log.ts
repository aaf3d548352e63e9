import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { SlabToSearch } from '@/shared/fit/fit-request';
import { type Laid, layMark, layOutline } from '@/shared/outline/lay-anew';
import type { NewMark, PieceMarks } from '@/shared/outline/piece-marks';
import type { PieceFlag } from '@/shared/wood/piece';

const OTHER: Readonly<Partial<Record<PieceFlag, PieceFlag>>> = {
  'live-edge-left': 'live-edge-right',
  'live-edge-right': 'live-edge-left',
};

/** A piece as it lay in its log, to be compared place for place with its sister: its drawing, its marks, its edges. */
export function layInLog(line: PieceLine, slab: SlabToSearch, { shift, turned }: Laid): [PieceLine, SlabToSearch] {
  if (shift === 0 && !turned) return [line, slab];
  const laid: Laid = { shift: -shift, turned };
  const outline = layOutline(slab.outline, laid);
  const marks = marksOf(line.marks, laid);
  const flags = turned ? line.facts.flags.map((flag) => OTHER[flag] ?? flag) : line.facts.flags;
  const moved: PieceLine = { ...line, marks, facts: { ...line.facts, flags } };
  return [moved, { ...slab, outline, defects: marks.defects }];
}

function marksOf(marks: PieceMarks, laid: Laid): PieceMarks {
  const lay = <M extends NewMark>(mark: M) => layMark(mark, laid) as M;
  return {
    endChecks: marks.endChecks,
    defects: marks.defects.map((mark) => ({ ...mark, ...lay({ is: 'defect', ...mark }) })),
    straps: marks.straps.map((mark) => ({ ...mark, ...lay({ is: 'strap', ...mark }) })),
  };
}
