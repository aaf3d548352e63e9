/**
 * Small settings of this one device, such as its camera. A browser may refuse storage (private windows, full disk); then the
 * setting is simply not remembered.
 */
export function recall(name: string): string | undefined {
  try {
    return globalThis.localStorage?.getItem(`flitchbook.${name}`) ?? undefined;
  } catch {
    return undefined;
  }
}

export function remember(name: string, value: string | undefined): void {
  try {
    if (value === undefined) globalThis.localStorage?.removeItem(`flitchbook.${name}`);
    else globalThis.localStorage?.setItem(`flitchbook.${name}`, value);
  } catch {
    // Refused storage: the device asks again next time.
  }
}
