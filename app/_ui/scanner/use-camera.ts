'use client';

import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { type CameraChoice, listCameras, openCameraStream, rememberCamera, troubleOf } from './camera-stream';
import { hasTorch, setTorch, settleCamera } from './camera-track';
import type { CameraTrouble } from './camera-trouble';
import { recall, remember } from './device-memory';

/** Set once the person let the camera in on this device, so that the finder may open by itself next time. */
const ALLOWED = 'camera-allowed';
const SETTLE_AFTER_MS = 2000;

export type CameraState =
  | { readonly kind: 'off' }
  | { readonly kind: 'opening' }
  | { readonly kind: 'live' }
  | { readonly kind: 'trouble'; readonly trouble: CameraTrouble };

export interface Camera {
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly state: CameraState;
  /** Every camera of the device, known once one has been allowed. */
  readonly choices: readonly CameraChoice[];
  readonly chosen: string | undefined;
  /** Undefined when the camera has no lamp. */
  readonly torch: boolean | undefined;
  readonly open: (deviceId?: string) => void;
  readonly close: () => void;
  readonly switchTorch: () => void;
}

/** Whether the camera was allowed on this device before and the browser has not taken that back. */
export async function cameraWasAllowed(): Promise<boolean> {
  if (recall(ALLOWED) !== 'yes' || !globalThis.isSecureContext) return false;
  try {
    const permission = await navigator.permissions.query({ name: 'camera' as PermissionName });
    return permission.state === 'granted';
  } catch {
    // Some browsers cannot be asked; they remember the answer themselves.
    return true;
  }
}

/**
 * The device's camera in a `<video ref={camera.video} playsInline muted autoPlay>`.
 *
 * Opens at 1920 × 1080 facing away where it can, and with the same camera as last time. Stops when the page is hidden, because
 * a home-screen app comes back with a dead picture, and reopens with it. A stream that arrives after it was closed is stopped.
 */
export function useCamera(): Camera {
  const video = useRef<HTMLVideoElement | null>(null);
  const stream = useRef<MediaStream | undefined>(undefined);
  const ticket = useRef(0);
  const wanted = useRef(false);
  const [state, setState] = useState<CameraState>({ kind: 'off' });
  const [choices, setChoices] = useState<readonly CameraChoice[]>([]);
  const [chosen, setChosen] = useState<string>();
  const [torch, setTorchState] = useState<boolean>();

  const stop = useCallback(() => {
    ticket.current += 1;
    for (const track of stream.current?.getTracks() ?? []) track.stop();
    stream.current = undefined;
    if (video.current) video.current.srcObject = null;
    setTorchState(undefined);
  }, []);

  const start = useCallback(
    async (deviceId?: string) => {
      stop();
      const mine = ticket.current;
      const isLate = () => mine !== ticket.current;
      setState({ kind: 'opening' });
      try {
        const opened = await openCameraStream(deviceId);
        const track = opened.getVideoTracks()[0];
        if (isLate() || !track || !video.current) {
          for (const each of opened.getTracks()) each.stop();
          return;
        }
        stream.current = opened;
        const granted = track.getSettings().deviceId;
        if (granted) rememberCamera(granted);
        remember(ALLOWED, 'yes');
        setChosen(granted);
        track.addEventListener('ended', () => {
          if (isLate()) return;
          stop();
          setState({ kind: 'trouble', trouble: 'busy' });
        });
        video.current.srcObject = opened;
        await video.current.play();
        if (isLate()) return;
        setState({ kind: 'live' });
        setTorchState(hasTorch(track) ? false : undefined);
        setTimeout(() => {
          if (!isLate()) void settleCamera(track);
        }, SETTLE_AFTER_MS);
        const list = await listCameras();
        if (!isLate()) setChoices(list);
      } catch (cause) {
        if (isLate()) return;
        stop();
        setState({ kind: 'trouble', trouble: troubleOf(cause) });
      }
    },
    [stop],
  );

  const open = useCallback(
    (deviceId?: string) => {
      wanted.current = true;
      void start(deviceId);
    },
    [start],
  );

  const close = useCallback(() => {
    wanted.current = false;
    stop();
    setState({ kind: 'off' });
  }, [stop]);

  const switchTorch = useCallback(() => {
    const track = stream.current?.getVideoTracks()[0];
    if (!track || torch === undefined) return;
    setTorch(track, !torch).then(
      () => setTorchState(!torch),
      () => setTorchState(undefined),
    );
  }, [torch]);

  useEffect(() => {
    const follow = () => {
      if (!wanted.current) return;
      if (document.hidden) {
        stop();
        setState({ kind: 'opening' });
      } else void start();
    };
    document.addEventListener('visibilitychange', follow);
    return () => {
      document.removeEventListener('visibilitychange', follow);
      wanted.current = false;
      stop();
    };
  }, [start, stop]);

  return { video, state, choices, chosen, torch, open, close, switchTorch };
}
