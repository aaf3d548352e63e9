import { type BellLine, type BellMemory, newLines, sayNewLines } from '@/app/_ui/bell/new-lines';
import { recall, remember } from '@/app/_ui/scanner/device-memory';

const TAG = 'flitchbook-watch';

/** Asks the book for the lines of Watch, rings once for those that are new here, and sets the badge. `quietly`: no ring. */
export async function lookAndRing({ quietly = false } = {}): Promise<number | undefined> {
  const read = await fetch('/api/watch', { cache: 'no-store' }).catch(() => undefined);
  if (!read?.ok) return undefined;
  const { answer } = (await read.json()) as { answer: { today: string; lines: BellLine[] } };
  const { fresh, memory } = newLines(answer.lines, readMemory(), answer.today);
  remember('bell.lines', JSON.stringify(memory));
  await setBadge(answer.lines.length);
  if (fresh.length > 0 && !quietly) await show(sayNewLines(fresh));
  return answer.lines.length;
}

/** Shows one notification: through the worker where there is one, because phones allow no other way. */
export async function show({ title, body }: { title: string; body: string }): Promise<void> {
  const options = { body, tag: TAG, icon: '/icon-192.png' };
  const worker = await navigator.serviceWorker?.getRegistration('/').catch(() => undefined);
  if (worker?.active) return worker.showNotification(title, options);
  const shown = new Notification(title, options);
  shown.onclick = () => {
    window.focus();
    window.location.assign('/watch');
  };
}

/** Fetches the worker that shows notifications; where the browser has none, a page that is open shows them itself. */
export async function fetchWorker(): Promise<void> {
  await navigator.serviceWorker?.register('/bell-worker.js', { scope: '/' }).catch(() => undefined);
  await Promise.race([navigator.serviceWorker?.ready, new Promise((resolve) => setTimeout(resolve, 3000))]);
}

/** Takes the worker and the badge away. */
export async function dropWorker(): Promise<void> {
  await setBadge(0);
  const worker = await navigator.serviceWorker?.getRegistration('/').catch(() => undefined);
  if (worker?.active?.scriptURL.endsWith('/bell-worker.js')) await worker.unregister();
}

/** The number on the app's sign, where the browser has that (Badging API, W3C). */
async function setBadge(count: number): Promise<void> {
  if (!('setAppBadge' in navigator)) return;
  await (count > 0 ? navigator.setAppBadge(count) : navigator.clearAppBadge()).catch(() => undefined);
}

function readMemory(): BellMemory {
  try {
    const kept: unknown = JSON.parse(recall('bell.lines') ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as BellMemory) : {};
  } catch {
    return {};
  }
}
