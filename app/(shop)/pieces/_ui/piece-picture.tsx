import type { BookHead } from '@/app/_server/book/read-book';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import type { ShapeFacts } from '@/app/_server/shapes/read-shape';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import { LinkKey } from '@/app/_ui/keys';
import { PieceDrawing } from '@/app/_ui/piece-drawing';
import type { PieceRow } from '@/app/(shop)/_parts/stock/piece-row';
import { DrawnHow } from '@/app/(shop)/_parts/stock/piece-wall';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { SlabPart } from '@/app/(shop)/pieces/_ui/slab-part';
import { placedReadings } from '@/app/(shop)/pieces/placed-readings';
import { sayShape } from '@/app/(shop)/pieces/say-shape';
import { countMarks } from '@/shared/outline/piece-marks';

export interface PiecePictureProps {
  line: PieceLine;
  row: PieceRow;
  shape: ShapeFacts | undefined;
  head: BookHead;
}

/** A piece as it is drawn at the top of its page, and the keys to what makes the drawing. A pack has none. */
export function PiecePicture({ line, row, shape, head }: PiecePictureProps) {
  if (line.form === 'pack') return null;
  const isMarked = countMarks(line.marks) > 0;
  // Marks have places: what carries some is drawn as far as the book can vouch for its outline.
  const drawn = line.shape || isMarked ? outlineOfPiece(line) : undefined;
  return (
    <>
      {drawn?.ok ? (
        <SlabPart
          key={line.shape?.id ?? 0}
          outline={drawn.value}
          marks={line.marks}
          photo={shape?.photo ? { ...shape.photo, src: `/photos/${shape.photo.file}` } : undefined}
          readings={placedReadings(line.readings)}
          live={row.shape.liveEdges}
          label={row.drawn}
        >
          <p className={styles.how}>
            {shape
              ? sayShape(shape, head)
              : 'Drawn to scale from the length and three widths, with its marks where they are.'}
          </p>
        </SlabPart>
      ) : (
        <>
          <div className={styles.large}>
            <PieceDrawing name={line.label} shape={row.shape} marks={row.marks} words={row.onWood} label={row.drawn} />
          </div>
          <DrawnHow rows={[row]} />
        </>
      )}
      {row.usedUp ? null : (
        <div className={styles.drawingKeys}>
          <LinkKey variant={line.shape ? 'ghost' : 'main'} href={`/pieces/${line.label}/measure`}>
            {line.shape ? 'Measure it again' : 'Measure its outline'}
          </LinkKey>
          <LinkKey variant="ghost" href={`/pieces/${line.label}/photo`}>
            Measure from a photo
          </LinkKey>
          <LinkKey variant="ghost" href={`/pieces/${line.label}/marks`}>
            {isMarked ? 'Change its marks' : 'Mark what is wrong'}
          </LinkKey>
          <LinkKey variant="ghost" href={`/pieces/${line.label}/cut`}>
            Cut it
          </LinkKey>
          <LinkKey variant="ghost" href={`/pieces/${line.label}/print`}>
            Print its page
          </LinkKey>
        </div>
      )}
    </>
  );
}
