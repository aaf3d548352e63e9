import fs from 'node:fs/promises';
import { bookFiles } from '@/prisma/book-files';

/** Whether the next start opens the book to the workshop's network, or only to this computer. */
export async function readServing(): Promise<{ network: boolean }> {
  try {
    const kept: unknown = JSON.parse(await fs.readFile(bookFiles().serving, 'utf8'));
    return { network: typeof kept === 'object' && kept !== null && 'network' in kept && kept.network === true };
  } catch {
    return { network: false };
  }
}

/** Keeps how the next start serves the book. */
export async function keepServing(serving: { network: boolean }): Promise<void> {
  const file = bookFiles().serving;
  await fs.writeFile(`${file}.part`, `${JSON.stringify(serving)}\n`, { flush: true });
  await fs.rename(`${file}.part`, file);
}

/** How this server is served now, as its start said; unknown where it was started otherwise. */
export function servingNow(): 'network' | 'this-computer' | 'unknown' {
  const said = process.env.FLITCHBOOK_NETWORK;
  return said === '1' ? 'network' : said === '0' ? 'this-computer' : 'unknown';
}
