import { PieceDrawing } from '@/app/_ui/piece-drawing';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import type { PieceRow } from '@/app/(shop)/_parts/stock/piece-row';

/** The little drawing of a piece: as it was measured and marked, or else from its three widths with signs for what is seen on it. */
export function RowDrawing({ row, longestMm }: { row: PieceRow; longestMm?: number }) {
  if (row.measured) {
    return <SlabDrawing {...row.measured} live={row.shape.liveEdges} wholeMm={longestMm} label={row.drawn} />;
  }
  return (
    <PieceDrawing
      name={row.label}
      shape={row.shape}
      marks={row.marks}
      words={row.onWood}
      longestMm={longestMm}
      label={row.drawn}
    />
  );
}
