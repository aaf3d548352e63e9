/**
 * What was typed and is not in the book yet, kept in this tab: it outlives a reload, the way back and another page. A
 * browser may refuse storage; then nothing is kept. `version` is raised when the shape of a draft changes, and what an older
 * one kept is then let go.
 */
export function recallDraft<T>(name: string, version: number): T | undefined {
  try {
    const kept: unknown = JSON.parse(globalThis.sessionStorage?.getItem(keyOf(name)) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return undefined;
    return 'version' in kept && kept.version === version && 'draft' in kept ? (kept.draft as T) : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a draft, or lets it go where it is undefined. */
export function keepDraft<T>(name: string, version: number, draft: T | undefined): void {
  try {
    if (draft === undefined) globalThis.sessionStorage?.removeItem(keyOf(name));
    else globalThis.sessionStorage?.setItem(keyOf(name), JSON.stringify({ version, draft }));
  } catch {
    // Refused storage: the draft lives as long as the page.
  }
}

const keyOf = (name: string) => `flitchbook.${name}`;
