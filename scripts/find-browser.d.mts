export function findBrowser(): Promise<string | undefined>;
export function ensureBrowser(): Promise<string>;
export const browserArgs: readonly string[];
