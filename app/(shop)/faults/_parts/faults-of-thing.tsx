import { bookForPage } from '@/app/_server/book/book-for-page';
import { faultsOf } from '@/app/_server/faults/faults-of';
import { LinkKey } from '@/app/_ui/keys';
import { Section } from '@/app/_ui/section';
import { FaultList } from '@/app/(shop)/faults/_parts/fault-list';
import { FaultDrawing } from '@/app/(shop)/faults/_ui/fault-drawing';
import styles from '@/app/(shop)/faults/_ui/faults.module.css';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';

export interface FaultsOfThingProps {
  stockId: number;
  label: string;
  kind: 'piece' | 'container';
  /** The drawing of a piece, for the faults that have a place on it. */
  drawing?: { outline: Outline; marks: PieceMarks };
}

/** What was found wrong with a piece or a container, drawn where it has a place; with the way to its trace. */
export async function FaultsOfThing({ stockId, label, kind, drawing }: FaultsOfThingProps) {
  const { book, head } = await bookForPage();
  const faults = await faultsOf(book.read, { stockId });
  const places = faults.flatMap(({ place, settled }) => (place && !settled ? [place] : []));
  const open = faults.filter(({ settled }) => !settled).length;
  return (
    <Section title="Faults and trace" aside={open > 0 ? `${open} open` : undefined}>
      {drawing && places.length > 0 ? (
        <div className={styles.drawing}>
          <FaultDrawing
            {...drawing}
            places={places}
            label={`The outline, with ${places.length === 1 ? 'the place of 1 fault' : `the places of ${places.length} faults`}.`}
          />
        </div>
      ) : null}
      {faults.length > 0 ? <FaultList faults={faults} head={head} traced /> : null}
      <div className={styles.keys}>
        <LinkKey variant="ghost" href={`/trace/${kind}/${label}`}>
          Trace it
        </LinkKey>
        <LinkKey variant="ghost" href={`/faults/new?${kind}=${label}`}>
          Write a fault down
        </LinkKey>
      </div>
    </Section>
  );
}
