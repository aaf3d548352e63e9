'use client';

import { useRef, useState } from 'react';
import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import { useAct } from '@/app/_ui/act/use-act';
import { Empty } from '@/app/_ui/empty';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Scanner } from '@/app/_ui/scanner/scanner';
import { Section } from '@/app/_ui/section';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { moveAction } from '@/app/(shop)/_parts/acts/actions';
import { NotAsked } from '@/app/(shop)/arrive/_ui/not-asked';
import { PlaceChoice, type PlaceOption, sayWhere } from '@/app/(shop)/arrive/_ui/place-choice';
import { useAsk } from '@/app/(shop)/arrive/_ui/use-ask';
import { useNewPlace } from '@/app/(shop)/arrive/_ui/use-new-place';
import { type Movable, nameOf } from '@/app/(shop)/arrive/move/_ui/movable';
import styles from '@/app/(shop)/arrive/move/_ui/move.module.css';
import { UndoMove } from '@/app/(shop)/arrive/move/_ui/undo-move';

/** What the last scan or press did; a refusal looks and sounds unlike what went well. */
type Said = { words: string; failed: boolean };
type Moved = { id: string; entryId: number; name: string; to: string; undone: boolean };

/** Scan the place, then things. What is scanned before its place waits for it. */
export function MoveThings({
  places: given,
  waiting: first,
  place: firstPlace,
}: {
  places: readonly PlaceOption[];
  waiting: readonly Movable[];
  place?: string;
}) {
  const [added, setAdded] = useState<readonly PlaceOption[]>([]);
  const places = [...given, ...added.filter((place) => !given.some((one) => one.label === place.label))];
  const [place, setPlaceState] = useState(firstPlace ?? '');
  const [waiting, setWaitingState] = useState<readonly Movable[]>(first);
  const [moved, setMoved] = useState<readonly Moved[]>([]);
  const [newPlace, setNewPlace] = useState('');
  const [said, setSaid] = useState<Said>({ words: '', failed: false });
  const adding = useNewPlace(newPlace, 'shelf');
  const { run, pending, problem } = useAct(moveAction);
  // Scans are answered one after the other, faster than the screen is drawn.
  const at = useRef({ place: firstPlace ?? '', waiting: first });
  const setPlace = (label: string) => {
    at.current.place = label;
    setPlaceState(label);
    setNewPlace('');
  };
  const say = (words: string) => setSaid({ words, failed: false });
  const refuse = (words: string) => {
    giveFeedback('error');
    setSaid({ words, failed: true });
  };
  const setWaiting = (things: readonly Movable[]) => {
    at.current.waiting = things;
    setWaitingState(things);
  };

  async function move(things: readonly Movable[], to: string) {
    const answer = await run({ labels: things.map((thing) => thing.label), placeLabel: to });
    if (!answer.ok) {
      if (answer.problem.code === 'same-place') {
        setWaiting([]);
        return refuse(`${things.map(nameOf).join('; ')}: ${answer.problem.what}`);
      }
      setWaiting(things);
      return refuse('Nothing was moved.');
    }
    giveFeedback('use');
    setWaiting([]);
    const { entryId, place: name } = answer.answer;
    const names = things.filter((thing) => answer.answer.moved.includes(thing.label)).map(nameOf);
    setMoved((before) => [{ id: `${entryId}`, entryId, name: names.join('; '), to: name, undone: false }, ...before]);
    say(names.length === 1 ? `${names[0]}: moved to ${name}.` : `${names.length} moved to ${name}.`);
  }

  async function take(scanned: Scanned) {
    if (scanned.kind === 'place') {
      if (!places.some((one) => one.label === scanned.label)) {
        setAdded((before) => [...before, { label: scanned.label, name: scanned.name, inside: null }]);
      }
      setPlace(scanned.label);
      if (at.current.waiting.length > 0) return move(at.current.waiting, scanned.label);
      return say(`Now scan what goes to ${scanned.name}.`);
    }
    if (scanned.kind === 'container' || scanned.kind === 'piece') {
      const others = at.current.waiting.filter((thing) => thing.label !== scanned.label);
      if (at.current.place) return move([...others, scanned], at.current.place);
      setWaiting([...others, scanned]);
      return say('Now scan the place it goes to.');
    }
    refuse(sayNotMovable(scanned));
  }

  const { ask, again, drop, asking, unasked } = useAsk(take);
  const name = sayWhere({ placeLabel: place, newPlace }, places);

  async function addPlace(): Promise<string | undefined> {
    if (newPlace.trim() === '') return undefined;
    const one = await adding.add();
    if (!one) {
      giveFeedback('error');
      return undefined;
    }
    setAdded((before) => [...before, one]);
    setPlace(one.label);
    return one.label;
  }

  async function moveWaiting() {
    const to = newPlace.trim() ? await addPlace() : place;
    if (to) await move(at.current.waiting, to);
  }

  return (
    <Page title="Move things" back={{ href: '/arrive', words: 'Arrive' }}>
      <div className={styles.columns}>
        <div>
          <Scanner
            onScan={ask}
            prompt={place && name ? `Scan what goes to ${name}.` : 'Scan the place, then the things.'}
            compact
          />
          <p role="status" className={styles.said}>
            {asking ? 'Asking the book…' : said.failed ? '' : said.words}
          </p>
          <p role="alert" className={styles.refused}>
            {said.failed && !asking ? (
              <>
                <VerdictMark word="stop" size={24} />
                <span>{said.words}</span>
              </>
            ) : null}
          </p>
          {unasked.length > 0 ? <NotAsked scans={unasked} onAgain={again} onDrop={drop} /> : null}
          <PlaceChoice
            places={places}
            where={{ placeLabel: place, newPlace }}
            onChange={(where) => {
              setPlace(where.placeLabel);
              setNewPlace(where.newPlace);
            }}
            adding={adding}
            onEnter={() => void addPlace()}
          >
            {newPlace.trim() && waiting.length === 0 ? (
              <Key variant="ghost" onClick={addPlace} pending={adding.pending} pendingWords="Adding the place…">
                Add the place {newPlace.trim()}
              </Key>
            ) : null}
          </PlaceChoice>
          {problem && problem.code !== 'same-place' ? (
            <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} />
          ) : null}
        </div>
        <div>
          {waiting.length > 0 ? (
            <Section title="Waiting for its place">
              <ul className={styles.list}>
                {waiting.map((thing) => (
                  <li key={thing.label} className={styles.line}>
                    <div>
                      {nameOf(thing)}
                      <p className={styles.soft}>Now: {thing.place ?? 'no place'}</p>
                    </div>
                    <Key
                      variant="ghost"
                      aria-label={`Leave it where it is: ${nameOf(thing)}`}
                      onClick={() => setWaiting(waiting.filter((one) => one.label !== thing.label))}
                    >
                      Leave it
                    </Key>
                  </li>
                ))}
              </ul>
            </Section>
          ) : null}
          <Section title="Moved">
            {moved.length === 0 ? (
              <Empty
                title="Nothing was moved yet."
                toDo="Scan the label of a place, then each thing that goes there."
              />
            ) : (
              <ul className={styles.list} aria-label="Moved">
                {moved.map((one) => (
                  <li key={one.id} className={styles.line}>
                    <div>
                      {one.undone ? <del>{one.name}</del> : one.name}
                      <p className={styles.soft}>{one.undone ? 'put back where it was' : `to ${one.to}`}</p>
                    </div>
                    {one.undone ? null : (
                      <UndoMove
                        entryId={one.entryId}
                        name={one.name}
                        onUndone={() =>
                          setMoved((all) => all.map((each) => (each.id === one.id ? { ...each, undone: true } : each)))
                        }
                      />
                    )}
                  </li>
                ))}
              </ul>
            )}
          </Section>
        </div>
      </div>
      {waiting.length > 0 && name ? (
        <KeyBar>
          <Key pending={pending || adding.pending} pendingWords="Moving…" onClick={moveWaiting}>
            Move {waiting.length === 1 ? 'it' : `${waiting.length} things`} to {name}
          </Key>
        </KeyBar>
      ) : (
        <div className={styles.end}>
          <LinkKey variant="ghost" href="/arrive">
            Done moving
          </LinkKey>
        </div>
      )}
    </Page>
  );
}

function sayNotMovable(scanned: Scanned): string {
  if (scanned.kind === 'not-in-book')
    return `${scanned.label.charAt(0)}-${scanned.label.slice(1)} is not in this book. Nothing was moved.`;
  if (scanned.kind === 'product')
    return `That is the maker’s code of ${scanned.product.name}. Scan our own label on the container.`;
  if (scanned.kind === 'unknown' && scanned.malformed) return 'That code does not read. Scan it again.';
  return 'That is no label of ours, and no place. Scan our own label on the thing.';
}
