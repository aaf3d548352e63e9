/** The camera abilities that browsers offer but the standard library's types do not know (W3C MediaStream Image Capture). */
interface CameraAbilities {
  readonly torch?: boolean;
  readonly focusMode?: readonly string[];
  readonly zoom?: { readonly min: number; readonly max: number };
}

interface CameraSetting {
  readonly torch?: boolean;
  readonly focusMode?: string;
  readonly zoom?: number;
}

/** Twice as large, held twice as far away: phones whose main lens does not focus close then read small labels. */
const READING_ZOOM = 2;

function abilities(track: MediaStreamTrack): CameraAbilities {
  return (track.getCapabilities?.() ?? {}) as CameraAbilities;
}

function apply(track: MediaStreamTrack, setting: CameraSetting): Promise<void> {
  return track.applyConstraints({ advanced: [setting as MediaTrackConstraintSet] });
}

/** Whether the track itself says it has a lamp. Ask once the picture plays: before that some phones answer wrongly. */
export function hasTorch(track: MediaStreamTrack): boolean {
  return abilities(track).torch === true;
}

/** Rejects when the phone turns out not to have the lamp it promised. */
export function setTorch(track: MediaStreamTrack, on: boolean): Promise<void> {
  return apply(track, { torch: on });
}

/** Asks for continuous focus and a reading zoom where the camera has them. One that refuses keeps its own way. */
export async function settleCamera(track: MediaStreamTrack): Promise<void> {
  const { focusMode, zoom } = abilities(track);
  if (focusMode?.includes('continuous')) await apply(track, { focusMode: 'continuous' }).catch(() => undefined);
  if (zoom && zoom.max >= READING_ZOOM && zoom.min <= READING_ZOOM) {
    await apply(track, { zoom: READING_ZOOM }).catch(() => undefined);
  }
}
