import { feedbackSetting } from './feedback-setting';

/** What just happened, told to ears and hand: a code read, the three verdicts, or something that went wrong. */
export type FeedbackKind = 'read' | 'use' | 'care' | 'stop' | 'error';

interface Tone {
  readonly hertz: number;
  readonly ms: number;
}

/** Rising for Use, level and doubled for Care, low and long for Stop: told apart with the phone in a pocket. */
const TONES: Record<FeedbackKind, readonly Tone[]> = {
  read: [{ hertz: 1320, ms: 70 }],
  use: [
    { hertz: 880, ms: 90 },
    { hertz: 1320, ms: 130 },
  ],
  care: [
    { hertz: 740, ms: 120 },
    { hertz: 740, ms: 120 },
  ],
  stop: [
    { hertz: 330, ms: 180 },
    { hertz: 247, ms: 420 },
  ],
  error: [
    { hertz: 220, ms: 110 },
    { hertz: 220, ms: 110 },
    { hertz: 220, ms: 110 },
  ],
};

const SHAKES: Record<FeedbackKind, number[]> = {
  read: [40],
  use: [40, 60, 90],
  care: [120, 90, 120],
  stop: [420, 100, 420],
  error: [60, 60, 60, 60, 60],
};

const REST_MS = 60;
const LOUDNESS = 0.18;

let sound: AudioContext | undefined;

/** Sounds and vibrates as the setting allows. Where the browser has neither, or has not been touched yet, it stays silent. */
export function giveFeedback(kind: FeedbackKind): void {
  const setting = feedbackSetting();
  if (
    setting.vibration &&
    typeof navigator.vibrate === 'function' &&
    navigator.userActivation?.hasBeenActive !== false
  ) {
    navigator.vibrate(SHAKES[kind]);
  }
  if (setting.sound) void play(TONES[kind]);
}

/** Wakes the sound inside a press, because phones allow it only there. */
export async function wakeSound(): Promise<void> {
  if (typeof AudioContext === 'undefined') return;
  sound ??= new AudioContext();
  // A refusal only means silence.
  if (sound.state === 'suspended') await sound.resume().catch(() => undefined);
}

async function play(tones: readonly Tone[]): Promise<void> {
  if (navigator.userActivation?.hasBeenActive === false) return;
  await wakeSound();
  if (sound?.state !== 'running') return;
  let at = sound.currentTime;
  for (const { hertz, ms } of tones) {
    const voice = sound.createOscillator();
    const level = sound.createGain();
    const end = at + ms / 1000;
    voice.type = 'triangle';
    voice.frequency.value = hertz;
    // Ramps at both ends, or the speaker clicks.
    level.gain.setValueAtTime(0, at);
    level.gain.linearRampToValueAtTime(LOUDNESS, at + 0.008);
    level.gain.setValueAtTime(LOUDNESS, end - 0.02);
    level.gain.linearRampToValueAtTime(0, end);
    voice.connect(level).connect(sound.destination);
    voice.start(at);
    voice.stop(end);
    at = end + REST_MS / 1000;
  }
}
