import { recall, remember } from '@/app/_ui/scanner/device-memory';

/** A press that has had no answer yet: the key it was sent under and what was asked. */
export type HeldPress = { readonly key: string; readonly request: string };

const nameOf = (keepAs: string) => `press.${keepAs}`;

/** The press this device still waits on, kept through a reload or a dead battery; undefined when there is none. */
export function heldPress(keepAs: string): HeldPress | undefined {
  const [key = '', ...request] = (recall(nameOf(keepAs)) ?? '').split('\n');
  return key === '' ? undefined : { key, request: request.join('\n') };
}

export function holdPress(keepAs: string, press: HeldPress | undefined): void {
  remember(nameOf(keepAs), press && `${press.key}\n${press.request}`);
}
