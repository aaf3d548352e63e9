'use client';

import { useRouter } from 'next/navigation';
import { useCallback, useEffect, useState } from 'react';
import type { Sighting } from '@/app/_server/stocktake/note-seen';
import type { Walked } from '@/app/_server/stocktake/walk-of';
import { Code } from '@/app/_ui/code';
import { Empty } from '@/app/_ui/empty';
import { Fold } from '@/app/_ui/fold';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { showCode } from '@/app/_ui/scanner/show-code';
import { Section } from '@/app/_ui/section';
import { NotAsked } from '@/app/(shop)/arrive/_ui/not-asked';
import { GiveUp } from '@/app/(shop)/stocktake/_ui/give-up';
import { LastSeen } from '@/app/(shop)/stocktake/_ui/last-seen';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { TakeOff } from '@/app/(shop)/stocktake/_ui/take-off';
import { useWalk } from '@/app/(shop)/stocktake/_ui/use-walk';
import { WalkRows } from '@/app/(shop)/stocktake/_ui/walk-rows';
import { DIFFERENCES } from '@/app/(shop)/stocktake/say-walk';
import type { UnitSystem } from '@/shared/units/unit-system';

/** How often the page looks what others have seen meanwhile. */
const LOOK_AGAIN_MS = 20_000;

/** Walks a place: scan what is there, weigh what is open. Everything is kept at once, on every phone that walks with. */
export function Walk({
  stocktake,
  place,
  walk,
  prefer,
}: {
  stocktake: number;
  place: string;
  walk: Walked;
  prefer: UnitSystem;
}) {
  const router = useRouter();
  const [last, setLast] = useState<Sighting>();
  const onSeen = useCallback((sighting: Sighting) => {
    giveFeedback(sighting.kind === 'thing' && sighting.thing.status === 'here' ? 'use' : 'care');
    setLast(sighting);
  }, []);
  const { see, again, drop, asking, unasked, problem } = useWalk(stocktake, onSeen);

  useEffect(() => {
    const timer = setInterval(() => {
      if (document.visibilityState === 'visible') router.refresh();
    }, LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [router]);

  const of = (status: string) => walk.things.filter((thing) => thing.status === status);
  const missing = of('missing');
  const here = of('here');
  const forget = (stockId?: number) => {
    if (last?.kind !== 'thing' || last.thing.stockId === stockId || stockId === undefined) setLast(undefined);
  };

  return (
    <>
      <div className={styles.columns}>
        <div>
          <Scanner onScan={see} prompt={`Scan what stands in ${place}.`} compact />
          <p role="status" className={styles.said}>
            {asking ? 'Noting it…' : ''}
          </p>
          {unasked.length > 0 ? <NotAsked scans={unasked} trouble={problem} onAgain={again} onDrop={drop} /> : null}
          {last && unasked.length === 0 ? (
            <LastSeen
              stocktake={stocktake}
              sighting={last}
              prefer={prefer}
              onCounted={(thing) => setLast({ kind: 'thing', thing, again: false })}
            />
          ) : null}
        </div>
        <div>
          {DIFFERENCES.filter(({ status }) => status !== 'missing').map(({ status, title }) => {
            const things = of(status);
            if (things.length === 0) return null;
            return (
              <Section key={status} title={title} aside={`${things.length}`}>
                <WalkRows
                  things={things}
                  prefer={prefer}
                  label={title}
                  beside={({ stockId, name, seen }) =>
                    seen ? <TakeOff which={{ stocktake, stockId }} name={name} onTaken={() => forget(stockId)} /> : null
                  }
                />
              </Section>
            );
          })}
          {walk.codes.length > 0 ? (
            <Section title="Codes that mean no thing here" aside={`${walk.codes.length}`}>
              <ul className={styles.rows} aria-label="Codes that mean no thing here">
                {walk.codes.map(({ lineId, code, by }) => (
                  <li key={lineId} className={styles.row}>
                    <div className={styles.what}>
                      <Code>{showCode(code)}</Code>
                      <span className={styles.soft}>
                        Read by {by}. Book it in under Arrive, or teach its code there.
                      </span>
                    </div>
                    <div className={styles.beside}>
                      <TakeOff which={{ stocktake, lineId }} words="Take it off" name={code} onTaken={() => forget()} />
                    </div>
                  </li>
                ))}
              </ul>
            </Section>
          ) : null}
          <Section title="Not seen yet" aside={`${missing.length}`}>
            {missing.length === 0 ? (
              <Empty
                title={
                  walk.things.length === 0
                    ? 'By the book nothing stands here.'
                    : 'Everything the book has here was seen.'
                }
                toDo={
                  walk.things.length === 0 ? 'Scan what you find all the same.' : 'Weigh what is open, then compare.'
                }
              />
            ) : (
              <WalkRows things={missing} prefer={prefer} label="Not seen yet" quiet />
            )}
          </Section>
          {here.length > 0 ? (
            <Fold title="Seen, as the book has it" now={`${here.length} ${here.length === 1 ? 'thing' : 'things'}`}>
              <WalkRows
                things={here}
                prefer={prefer}
                label="Seen, as the book has it"
                most={200}
                beside={({ stockId, name }) => (
                  <TakeOff which={{ stocktake, stockId }} name={name} onTaken={() => forget(stockId)} />
                )}
              />
            </Fold>
          ) : null}
          <GiveUp stocktake={stocktake} place={place} />
        </div>
      </div>
      <KeyBar>
        <LinkKey href={`/stocktake/${stocktake}/finish`}>Compare and post</LinkKey>
        <LinkKey href="/stocktake" variant="ghost">
          Go on later
        </LinkKey>
      </KeyBar>
    </>
  );
}
