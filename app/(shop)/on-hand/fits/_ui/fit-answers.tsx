import { Empty } from '@/app/_ui/empty';
import { Fold } from '@/app/_ui/fold';
import { LinkKey } from '@/app/_ui/keys';
import { FitList, ShortList } from '@/app/(shop)/on-hand/fits/_ui/fit-list';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import type { FitsView } from '@/app/(shop)/on-hand/fits/fits-view';

interface FitAnswersProps {
  view: FitsView;
  /** The question, as the address has it. */
  query: string;
  /** The job the top is for, where that is known. */
  jobId: number | undefined;
}

/** What the wood on hand says to a question. */
export function FitAnswers({ view, query, jobId }: FitAnswersProps) {
  const { drawn, more, noes, togetherNoes, tolerance, unmeasured, packs, rough, make } = view;
  if (view.looked === 0) return <NoWood {...view} />;
  return (
    <>
      <p className={styles.looked} role="status">
        {view.said}
      </p>
      {rough ? (
        <p className={styles.caution}>
          Where only three widths are known, edges run straight between them: measure the outline before cutting. What
          is not marked on a piece is not kept clear of.
        </p>
      ) : null}
      {drawn.length > 0 ? (
        <FitList rows={drawn} query={query} jobId={jobId} />
      ) : (
        <Empty
          title={
            make === 'one'
              ? 'No piece on hand gives this top, nor nearly.'
              : 'No two pieces on hand give this top, nor nearly.'
          }
          toDo={
            make === 'pair'
              ? 'Only sisters side by side in their flitch, or kept as a pair, open like a book. Try a smaller top, or two pieces with a river.'
              : 'Try a smaller top, less lost at the edges and ends, or more turn of the grain.'
          }
        />
      )}
      {more.length > 0 ? (
        <Fold title={`${more.length} more`} now="not drawn, in the same order">
          <ShortList rows={more} />
        </Fold>
      ) : null}
      {noes.length > 0 && tolerance !== undefined ? (
        <Fold title={`${noes.length} cannot`} now={`no: proved to ${tolerance} mm`}>
          <p>
            Each was ruled out at every place and every angle allowed, and no top of 85 % of the length, the width or
            both fits either.
          </p>
          <ShortList rows={noes} />
        </Fold>
      ) : null}
      {togetherNoes > 0 ? (
        <p className={styles.soft}>
          {togetherNoes.toLocaleString('en')} {togetherNoes === 1 ? 'pairing makes' : 'pairings make'} no such top, not
          even at 85 % of its size.
        </p>
      ) : null}
      {packs > 0 ? (
        <p className={styles.soft}>
          {packs === 1 ? 'One pack of boards was' : `${packs.toLocaleString('en')} packs of boards were`} not looked at:
          take a board out, and it is.
        </p>
      ) : null}
      {unmeasured.length > 0 ? (
        <Fold title={`${unmeasured.length} not judged`} now="their widths make no outline">
          <ShortList rows={unmeasured} />
        </Fold>
      ) : null}
    </>
  );
}

function NoWood({ narrowed, make }: Pick<FitsView, 'narrowed' | 'make'>) {
  if (make === 'pair') {
    return (
      <Empty
        title="No two sisters are on hand."
        toDo="Sisters are slabs of one flitch with numbers that follow one another. Note flitch and number on their pages, or keep two as a pair."
      />
    );
  }
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
