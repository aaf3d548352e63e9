/** A key going down (or the Alt key coming up) as the detector sees it. Times are the event's own, in milliseconds. */
export interface WedgeKey {
  readonly key: string;
  /** The physical key, such as `Numpad0`. */
  readonly code?: string;
  readonly timeStamp: number;
  /** `composing` while an input method builds a character; then nothing is ever taken. */
  readonly target: 'page' | 'field' | 'composing';
  readonly ctrl?: boolean;
  readonly alt?: boolean;
  readonly meta?: boolean;
  /** The key is held down and repeating. */
  readonly repeat?: boolean;
  readonly up?: boolean;
}

export interface WedgeState {
  readonly text: string;
  readonly gaps: number;
  readonly slowGaps: number;
  /** The widest gap between events since the last character, modifiers included. */
  readonly widest: number;
  readonly lastAt: number;
  /** Digits typed while Alt is held: a character by its number. */
  readonly altDigits: string;
  /** A fast run broke off without its end key just before this one. */
  readonly isRemainder: boolean;
}

/**
 * `typing`: leave it alone. `start`: the first key of what may be a scan, so note what the field holds.
 * `burst`: the keys now come faster than fingers. `scan`: a whole code. `broken`: a scan with a piece missing.
 */
export type WedgeDecision =
  | { readonly kind: 'typing' | 'start' | 'burst' | 'broken' }
  | { readonly kind: 'scan'; readonly text: string };

export const WEDGE_IDLE: WedgeState = {
  text: '',
  gaps: 0,
  slowGaps: 0,
  widest: 0,
  lastAt: Number.NEGATIVE_INFINITY,
  altDigits: '',
  isRemainder: false,
};

/**
 * The state when listening begins, at `now` on the clock of the events. Keys that come right then may be the end of a code
 * whose beginning went by before the page was ready, and half a code is a wrong code.
 */
export function wedgeWaking(now: number): WedgeState {
  return { ...WEDGE_IDLE, lastAt: now, isRemainder: true };
}

/** Keys this close together come from a machine. Fast typists keep about 60 ms and more over any four keys. */
export const FAST_MS = 35;
/** A radio link may stumble once in eight keys by up to this long. Past it the run is over. */
const STUMBLE_MS = 100;
const KEYS_PER_STUMBLE = 8;
export const SHORTEST_SCAN = 4;
/** A run that broke off makes what follows within this time a remainder, not a code. */
const REMAINDER_MS = 500;
const SHOWS_SPEED = 2;

const typing: WedgeDecision = { kind: 'typing' };

/**
 * Tells a scanner that types from a person who types, one key at a time.
 *
 * A scan is a run of at least {@link SHORTEST_SCAN} characters and an end key (Enter or Tab), every key within
 * {@link FAST_MS} of the one before, but for one stumble in eight. A run that broke off and went on is reported as `broken`,
 * because its tail alone would be a wrong code. Group separators are taken as Ctrl+], Alt+029 or the character itself.
 * Held keys, input methods, shortcuts and slow keys are typing.
 *
 * @example four keys 10 ms apart, then Enter: `start`, `burst`, `burst`, `burst`, `scan`
 */
export function pressWedgeKey(state: WedgeState, press: WedgeKey): { state: WedgeState; decision: WedgeDecision } {
  if (press.target === 'composing' || press.repeat || press.meta || press.key === 'Dead') {
    return { state: WEDGE_IDLE, decision: typing };
  }
  const gap = press.timeStamp - state.lastAt;
  const run = gap >= 0 && gap <= STUMBLE_MS ? state : startAfter(state, gap);
  const timed = { ...run, widest: Math.max(run.widest, gap), lastAt: press.timeStamp };
  if (press.up) return releaseKey(timed, press);
  if (press.alt && !press.ctrl && /^(Numpad|Digit)[0-9]$/.test(press.code ?? '')) {
    return { state: { ...timed, altDigits: timed.altDigits + (press.code ?? '').slice(-1) }, decision: mark(timed) };
  }
  if (MODIFIERS.has(press.key)) return { state: timed, decision: typing };
  if (isEnd(press, timed)) return end(timed);
  const character = characterOf(press, timed);
  return character === undefined ? { state: WEDGE_IDLE, decision: typing } : add(timed, character);
}

const MODIFIERS = new Set(['Shift', 'Control', 'Alt', 'AltGraph', 'CapsLock', 'NumLock']);

function isEnd(press: WedgeKey, state: WedgeState): boolean {
  if (press.key === 'Enter' || press.key === 'Tab') return !press.ctrl && !press.alt;
  return Boolean(press.ctrl) && (press.key === 'm' || press.key === 'j') && state.text !== '';
}

/** Ctrl with a letter or bracket is a control character, but only inside a run: at rest it is somebody's shortcut. */
function characterOf(press: WedgeKey, state: WedgeState): string | undefined {
  const letters = [...press.key];
  if (letters.length !== 1) return undefined;
  if (!press.ctrl) return press.alt ? undefined : press.key;
  // AltGr arrives as Ctrl and Alt together, with the finished character.
  if (press.alt) return press.key;
  const number = press.key.toUpperCase().charCodeAt(0);
  const inRun = state.gaps >= 1 || press.key === ']';
  return inRun && number >= 64 && number <= 95 ? String.fromCharCode(number & 31) : undefined;
}

function releaseKey(state: WedgeState, press: WedgeKey) {
  if (press.key !== 'Alt' || state.altDigits === '') return { state, decision: typing };
  const number = Number(state.altDigits);
  const cleared = { ...state, altDigits: '' };
  return number > 0 && number < 256
    ? add(cleared, String.fromCharCode(number))
    : { state: WEDGE_IDLE, decision: typing };
}

function add(state: WedgeState, character: string): { state: WedgeState; decision: WedgeDecision } {
  const first = state.text === '';
  const next = {
    ...state,
    text: state.text + character,
    gaps: first ? 0 : state.gaps + 1,
    slowGaps: first ? 0 : state.slowGaps + (state.widest > FAST_MS ? 1 : 0),
    widest: 0,
  };
  return { state: next, decision: first ? { kind: 'start' } : mark(next) };
}

function mark(state: WedgeState): WedgeDecision {
  return { kind: state.gaps + 1 >= SHOWS_SPEED && isMachineFast(state) ? 'burst' : 'typing' };
}

function isMachineFast(state: WedgeState): boolean {
  return state.slowGaps <= Math.floor(state.gaps / KEYS_PER_STUMBLE);
}

function end(state: WedgeState): { state: WedgeState; decision: WedgeDecision } {
  const whole = { ...state, gaps: state.gaps + 1, slowGaps: state.slowGaps + (state.widest > FAST_MS ? 1 : 0) };
  if ([...state.text].length < SHORTEST_SCAN || !isMachineFast(whole)) return { state: WEDGE_IDLE, decision: typing };
  if (state.isRemainder) return { state: WEDGE_IDLE, decision: { kind: 'broken' } };
  return { state: WEDGE_IDLE, decision: { kind: 'scan', text: state.text } };
}

/** The state for a key that comes too late to belong to the run: a new run, which may be the remainder of the last one. */
function startAfter(state: WedgeState, gap: number): WedgeState {
  const wasScan = [...state.text].length >= SHORTEST_SCAN && isMachineFast(state);
  return { ...WEDGE_IDLE, isRemainder: (wasScan || state.isRemainder) && gap <= REMAINDER_MS };
}
