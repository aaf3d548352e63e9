import { createHash } from 'node:crypto';

/**
 * The digest of a request as it was sent, before anything was read from it. A press sent again is the same request even
 * where it would be read otherwise by then: an empty day is another day after midnight, a number another one after the
 * units were changed. Files count by name, type and content; what is undefined counts as not sent.
 */
export async function digestOfRequest(sent: unknown): Promise<string> {
  return createHash('sha256')
    .update(JSON.stringify(await plain(sent)) ?? '')
    .digest('hex');
}

async function plain(value: unknown): Promise<unknown> {
  if (value instanceof Blob) {
    const content = createHash('sha256').update(new Uint8Array(await value.arrayBuffer()));
    return { file: value instanceof File ? value.name : '', type: value.type, content: content.digest('hex') };
  }
  if (typeof value === 'bigint') return `${value}n`;
  if (Array.isArray(value)) return Promise.all(value.map(plain));
  if (typeof value !== 'object' || value === null || value instanceof Date) return value;
  const entries: [string, unknown][] = [];
  for (const name of Object.keys(value).sort()) entries.push([name, await plain(Reflect.get(value, name))]);
  return Object.fromEntries(entries);
}
