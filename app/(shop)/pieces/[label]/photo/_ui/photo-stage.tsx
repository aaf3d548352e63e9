import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import { Loupe } from '@/app/(shop)/pieces/[label]/photo/_ui/loupe';
import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { type StageLine, StageLines, type StageWords } from '@/app/(shop)/pieces/[label]/photo/_ui/stage-lines';
import { sizeOf, useHands } from '@/app/(shop)/pieces/[label]/photo/_ui/use-hands';
import {
  heldIn,
  keptOn,
  onPhoto,
  onScreen,
  type Size,
  sideAt,
  type View,
  wholeIn,
  zoomed,
} from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import type { Pixel } from '@/shared/outline/sheet-marks';

export interface PhotoStageProps {
  src: string;
  photo: Size;
  /** What is being tapped: the corners, the edge or one gap. */
  points: readonly Pixel[];
  closed: boolean;
  /** No more than so many points. */
  most: number;
  lines: readonly StageLine[];
  words: readonly StageWords[];
  wrong: number | undefined;
  /** "corner", "point of the edge". */
  noun: string;
  canUndo: boolean;
  onUndo: () => void;
  /** The points as they are now; `isNew` where one movement begins or a point came or went. */
  onChange: (points: readonly Pixel[], isNew: boolean) => void;
}

const PUSH = 48;
const NEARER = 1.5;
/** A tap so near to a side goes between its ends, screen pixels. */
const NEAR_SIDE = 18;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The photo, to be brought near and tapped on, by finger, mouse or keys. */
export function PhotoStage(props: PhotoStageProps) {
  const { src, photo, points, closed, most, lines, words, wrong, noun, canUndo, onUndo, onChange } = props;
  const id = useId();
  const frame = useRef<HTMLDivElement>(null);
  const [view, setView] = useState<View>({ scale: 0.1, x: 0, y: 0 });
  const [chosen, setChosen] = useState<number>();
  const [held, setHeld] = useState(false);
  const picked = chosen === undefined ? undefined : points[chosen];

  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    const fit = new ResizeObserver(() => setView(wholeIn(sizeOf(box), photo)));
    fit.observe(box);
    return () => fit.disconnect();
  }, [photo]);

  const middle = (): Pixel => {
    const { width, height } = frame.current ? sizeOf(frame.current) : { width: 0, height: 0 };
    return { x: width / 2, y: height / 2 };
  };
  const nearer = (by: number) => {
    if (frame.current)
      setView(zoomed(view, by, picked ? onScreen(view, picked) : middle(), sizeOf(frame.current), photo));
  };
  const whole = () => frame.current && setView(wholeIn(sizeOf(frame.current), photo));
  const choose = (nr: number | undefined) => {
    setChosen(nr);
    const point = nr === undefined ? undefined : points[nr];
    const box = frame.current;
    if (!point || !box) return;
    const { x, y } = onScreen(view, point);
    const [size, half] = [sizeOf(box), middle()];
    if (x < 0 || y < 0 || x > size.width || y > size.height)
      setView(heldIn({ ...view, x: view.x + half.x - x, y: view.y + half.y - y }, size, photo));
  };
  const move = (nr: number, to: Pixel, isNew: boolean) =>
    onChange(
      points.map((point, at) => (at === nr ? to : point)),
      isNew,
    );
  const add = (pixel: Pixel) => {
    if (points.length >= most) return setChosen(undefined);
    const side = closed ? sideAt(points, pixel, NEAR_SIDE / view.scale) : undefined;
    const at = side === undefined ? points.length : side + 1;
    onChange([...points.slice(0, at), pixel, ...points.slice(at)], true);
    setChosen(at);
  };
  const takeOut = () => {
    if (chosen === undefined) return;
    onChange(
      points.filter((_, at) => at !== chosen),
      true,
    );
    setChosen(undefined);
  };

  const hands = useHands({
    frame,
    view,
    setView,
    photo,
    points,
    onTap: add,
    onGrab: (nr) => {
      setChosen(nr);
      setHeld(true);
    },
    onMove: move,
    onLetGo: () => setHeld(false),
  });

  const press = (key: KeyboardEvent) => {
    const arrow = ARROWS[key.key];
    if (key.ctrlKey || key.metaKey) {
      if (key.key !== 'z') return;
      onUndo();
    } else if (arrow && chosen !== undefined && picked) {
      const by = key.shiftKey ? 10 : 1;
      move(chosen, keptOn(photo, { x: picked.x + arrow[0] * by, y: picked.y + arrow[1] * by }), !key.repeat);
    } else if (arrow && frame.current) {
      setView(
        heldIn({ ...view, x: view.x - arrow[0] * PUSH, y: view.y - arrow[1] * PUSH }, sizeOf(frame.current), photo),
      );
    } else if (key.key === 'Enter' || key.key === ' ') {
      if (chosen === undefined) add(keptOn(photo, onPhoto(view, middle())));
      else setChosen(undefined);
    } else if (key.key === 'n') choose(points.length ? ((chosen ?? -1) + 1) % points.length : undefined);
    else if (key.key === 'p')
      choose(points.length ? ((chosen ?? points.length) + points.length - 1) % points.length : undefined);
    else if (key.key === '+' || key.key === '=') nearer(NEARER);
    else if (key.key === '-') nearer(1 / NEARER);
    else if (key.key === '0') whole();
    else if (key.key === 'Delete' || key.key === 'Backspace') takeOut();
    else if (key.key === 'Escape') setChosen(undefined);
    else return;
    key.preventDefault();
  };

  return (
    <div className={styles.stage}>
      <div
        ref={frame}
        className={styles.frame}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes its own keys, named right under it.
        tabIndex={0}
        aria-label={`The photo, ${points.length} marked`}
        aria-describedby={`${id}-keys`}
        data-chosen={chosen !== undefined || undefined}
        onKeyDown={press}
        {...hands}
      >
        {/* biome-ignore lint/performance/noImgElement: the picture is on this device and never fetched */}
        <img
          src={src}
          alt=""
          draggable={false}
          className={styles.photo}
          style={{
            width: photo.width,
            height: photo.height,
            transform: `translate(${view.x}px, ${view.y}px) scale(${view.scale})`,
          }}
        />
        <StageLines
          view={view}
          lines={lines}
          words={words}
          points={points}
          closed={closed}
          chosen={chosen}
          wrong={wrong}
        />
        <span className={styles.cross} aria-hidden="true" />
        {held && picked && frame.current ? (
          <Loupe src={src} at={picked} view={view} photo={photo} frame={sizeOf(frame.current)} />
        ) : null}
      </div>
      <p className="unseen" role="status">
        {picked && chosen !== undefined
          ? `${noun} ${chosen + 1} of ${points.length}, ${Math.round(picked.x)} across, ${Math.round(picked.y)} down.`
          : ''}
      </p>
      <div className={styles.tools}>
        <button type="button" className={styles.tool} disabled={!canUndo} onClick={onUndo}>
          Undo
        </button>
        <button type="button" className={styles.tool} disabled={picked === undefined} onClick={takeOut}>
          Take out
        </button>
        <button type="button" className={styles.tool} aria-label="Further" onClick={() => nearer(1 / NEARER)}>
          −
        </button>
        <button type="button" className={styles.tool} aria-label="Nearer" onClick={() => nearer(NEARER)}>
          +
        </button>
        <button type="button" className={styles.tool} onClick={whole}>
          Whole
        </button>
      </div>
      <p id={`${id}-keys`} className={styles.keysHow}>
        By keys: arrows push the photo, + and − bring it nearer and further, Enter marks what is under the cross. N and
        P go from point to point; then arrows move it by one pixel, with Shift by ten, Delete takes it out, Escape lets
        it go.
      </p>
    </div>
  );
}
