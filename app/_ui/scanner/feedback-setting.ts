import { useSyncExternalStore } from 'react';
import { recall, remember } from './device-memory';

export interface FeedbackSetting {
  readonly sound: boolean;
  readonly vibration: boolean;
}

const ON: FeedbackSetting = { sound: true, vibration: true };
const NAME = 'feedback';
const listeners = new Set<() => void>();
let known: FeedbackSetting | undefined;

/** What this device is allowed to do; both are on until somebody turns them off. */
export function feedbackSetting(): FeedbackSetting {
  known ??= parse(recall(NAME));
  return known;
}

function setFeedback(setting: FeedbackSetting): void {
  known = setting;
  remember(NAME, `${setting.sound ? 'sound' : ''} ${setting.vibration ? 'vibration' : ''}`.trim() || 'silent');
  for (const listener of listeners) listener();
}

/** The setting for a component, with its change. */
export function useFeedbackSetting(): [FeedbackSetting, (setting: FeedbackSetting) => void] {
  return [useSyncExternalStore(subscribe, feedbackSetting, () => ON), setFeedback];
}

function parse(stored: string | undefined): FeedbackSetting {
  if (stored === undefined) return ON;
  const words = stored.split(' ');
  return { sound: words.includes('sound'), vibration: words.includes('vibration') };
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
