import type { FitAsk, WhatFits } from '@/app/_server/fits/what-fits';
import { Empty } from '@/app/_ui/empty';
import { Fold } from '@/app/_ui/fold';
import { LinkKey } from '@/app/_ui/keys';
import { FitList, ShortList } from '@/app/(shop)/on-hand/fits/_ui/fit-list';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import { fitRow, type RowContext } from '@/app/(shop)/on-hand/fits/fit-row';
import { sayLooked } from '@/app/(shop)/on-hand/fits/say-question';

/** So many are drawn; the rest of a long answer follows a line each. */
const MOST_DRAWN = 40;

/** What the wood on hand says to a question. */
export function FitAnswers({ fits, ask, context }: { fits: WhatFits; ask: FitAsk; context: RowContext }) {
  const rows = fits.ranked.map((piece) => fitRow(piece, fits.sizes, context));
  const noes = fits.noes.map((piece) => fitRow(piece, fits.sizes, context));
  const drawn = rows.slice(0, MOST_DRAWN);
  const more = rows.slice(MOST_DRAWN);
  const tolerance = fits.noes[0]?.judged.fit;
  if (fits.looked === 0) return <NoWood ask={ask} />;
  return (
    <>
      <p className={styles.looked} role="status">
        {sayLooked(fits)}
      </p>
      <p className={styles.caution}>
        From three widths joined by straight lines: measure more stations before cutting. Checks, breaks and knots have
        no place in the book yet, so none is kept clear of.
      </p>
      {drawn.length > 0 ? (
        <FitList rows={drawn} />
      ) : (
        <Empty
          title="No piece on hand gives this top, nor nearly."
          toDo="Try a smaller top, less lost at the edges and ends, or more turn of the grain."
        />
      )}
      {more.length > 0 ? (
        <Fold title={`${more.length} more`} now="not drawn, in the same order">
          <ShortList rows={more.map(({ label, title, words }) => ({ label, title, says: words }))} />
        </Fold>
      ) : null}
      {noes.length > 0 && tolerance?.answer === 'no' ? (
        <Fold title={`${noes.length} cannot`} now={`no: proved to ${tolerance.proof.tolerance / 1_000_000} mm`}>
          <p>
            Each was ruled out at every place and every angle allowed, and no top of 85 % of the length, the width or
            both fits either.
          </p>
          <ShortList
            rows={noes.map(({ label, title, facts }) => ({ label, title, says: facts.slice(0, 2).join(', ') }))}
          />
        </Fold>
      ) : null}
      {fits.unmeasured.length > 0 ? (
        <Fold title={`${fits.unmeasured.length} not judged`} now="their widths make no outline">
          <ShortList
            rows={fits.unmeasured.map((line) => ({
              label: line.label,
              title: `${line.species} ${line.form}`,
              says: 'Measure its length and widths again.',
            }))}
          />
        </Fold>
      ) : null}
    </>
  );
}

function NoWood({ ask }: { ask: FitAsk }) {
  const narrowed = ask.species !== undefined || ask.freeOnly;
  return (
    <Empty
      title={narrowed ? 'No such wood is on hand.' : 'No slab, board or offcut is on hand.'}
      toDo={
        narrowed
          ? 'Ask again for any species, or also for what is promised or held.'
          : 'Wood that arrives is measured as it goes into the book; then it is looked at here.'
      }
    >
      {narrowed ? null : <LinkKey href="/arrive/wood">Wood has arrived</LinkKey>}
    </Empty>
  );
}
