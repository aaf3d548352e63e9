const YEAR_SECONDS = 365 * 24 * 60 * 60;

/** Keeps a name on this device, where the server sees it with every request; an empty one is forgotten. */
export function keepOnDevice(cookie: 'flitchbook-who' | 'flitchbook-device', name: string): void {
  const value = name.trim();
  const age = value === '' ? 0 : YEAR_SECONDS;
  // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API is missing on a plain-http network
  document.cookie = `${cookie}=${encodeURIComponent(value)}; path=/; max-age=${age}; SameSite=Lax`;
}
