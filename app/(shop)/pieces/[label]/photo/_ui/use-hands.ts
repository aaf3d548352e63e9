import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import {
  heldIn,
  keptOn,
  onPhoto,
  onScreen,
  type Size,
  type View,
  zoomed,
} from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import type { Pixel } from '@/shared/outline/sheet-marks';

export interface Hands {
  frame: RefObject<HTMLElement | null>;
  view: View;
  setView: (view: View) => void;
  photo: Size;
  points: readonly Pixel[];
  onTap: (pixel: Pixel) => void;
  onGrab: (nr: number) => void;
  onMove: (nr: number, pixel: Pixel, isFirst: boolean) => void;
  onLetGo: () => void;
}

/** How near a finger and a mouse come to a point to mean it, and how far they may tremble in a tap; screen pixels. */
const REACH = { touch: 28, mouse: 16 };
const TREMBLE = { touch: 9, mouse: 4 };

type Doing =
  | { is: 'point'; nr: number; from: Pixel; offset: Pixel; moved: boolean }
  | { is: 'photo'; from: Pixel; view: View; moved: boolean }
  | { is: 'pinch'; apart: number; middle: Pixel; view: View };

/**
 * One finger on a point drags it, by as much as the finger moves so that it stays in sight; elsewhere it taps or pushes
 * the photo. Two fingers, or the wheel, bring it nearer.
 */
export function useHands({ frame, view, setView, photo, points, onTap, onGrab, onMove, onLetGo }: Hands) {
  const fingers = useRef(new Map<number, Pixel>());
  const doing = useRef<Doing>(undefined);
  const now = useRef({ view, setView, photo });
  now.current = { view, setView, photo };

  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    // The page's own listener for the wheel may not hold it back.
    const turn = (wheel: WheelEvent) => {
      wheel.preventDefault();
      const { view: at, setView: set, photo: of } = now.current;
      const { left, top } = box.getBoundingClientRect();
      const about = { x: wheel.clientX - left, y: wheel.clientY - top };
      set(zoomed(at, Math.exp(-wheel.deltaY * (wheel.ctrlKey ? 0.01 : 0.0015)), about, sizeOf(box), of));
    };
    box.addEventListener('wheel', turn, { passive: false });
    return () => box.removeEventListener('wheel', turn);
  }, [frame]);

  const place = (event: PointerEvent): Pixel => {
    const { left = 0, top = 0 } = frame.current?.getBoundingClientRect() ?? {};
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const kind = (event: PointerEvent) => (event.pointerType === 'mouse' ? 'mouse' : 'touch');

  const end = (event: PointerEvent, isTap: boolean) => {
    fingers.current.delete(event.pointerId);
    const was = doing.current;
    doing.current = undefined;
    if (isTap && was?.is === 'photo' && !was.moved) {
      const pixel = onPhoto(view, place(event));
      const kept = keptOn(photo, pixel);
      if (kept.x === pixel.x && kept.y === pixel.y) onTap(kept);
    }
    if (was?.is === 'point') onLetGo();
  };

  return {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      if (event.button > 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = place(event);
      fingers.current.set(event.pointerId, at);
      const [one, two] = [...fingers.current.values()];
      if (one && two) {
        if (doing.current?.is === 'point') onLetGo();
        doing.current = { is: 'pinch', ...between(one, two), view };
        return;
      }
      const nr = nearest(
        points.map((point) => onScreen(view, point)),
        at,
        REACH[kind(event)],
      );
      const point = nr === undefined ? undefined : points[nr];
      if (nr === undefined || !point) {
        doing.current = { is: 'photo', from: at, view, moved: false };
        return;
      }
      const seen = onScreen(view, point);
      doing.current = { is: 'point', nr, from: at, offset: { x: seen.x - at.x, y: seen.y - at.y }, moved: false };
      onGrab(nr);
    },
    onPointerMove(event: PointerEvent) {
      if (!fingers.current.has(event.pointerId)) return;
      const at = place(event);
      fingers.current.set(event.pointerId, at);
      const now = doing.current;
      const box = frame.current;
      if (!now || !box) return;
      if (now.is === 'pinch') {
        const [one, two] = [...fingers.current.values()];
        if (!one || !two) return;
        const { apart, middle } = between(one, two);
        const moved = { ...now.view, x: now.view.x + middle.x - now.middle.x, y: now.view.y + middle.y - now.middle.y };
        return setView(zoomed(moved, apart / Math.max(1, now.apart), middle, sizeOf(box), photo));
      }
      const [dx, dy] = [at.x - now.from.x, at.y - now.from.y];
      if (!now.moved && Math.hypot(dx, dy) < TREMBLE[kind(event)]) return;
      const isFirst = !now.moved;
      now.moved = true;
      if (now.is === 'photo')
        return setView(heldIn({ ...now.view, x: now.view.x + dx, y: now.view.y + dy }, sizeOf(box), photo));
      onMove(now.nr, keptOn(photo, onPhoto(view, { x: at.x + now.offset.x, y: at.y + now.offset.y })), isFirst);
    },
    onPointerUp: (event: PointerEvent) => end(event, true),
    onPointerCancel: (event: PointerEvent) => end(event, false),
  };
}

export const sizeOf = (box: HTMLElement): Size => ({ width: box.clientWidth, height: box.clientHeight });

function between(one: Pixel, two: Pixel) {
  return {
    apart: Math.hypot(one.x - two.x, one.y - two.y),
    middle: { x: (one.x + two.x) / 2, y: (one.y + two.y) / 2 },
  };
}

function nearest(points: readonly Pixel[], at: Pixel, reach: number): number | undefined {
  const far = points.map(({ x, y }) => Math.hypot(x - at.x, y - at.y));
  const least = Math.min(...far);
  return least <= reach ? far.indexOf(least) : undefined;
}
