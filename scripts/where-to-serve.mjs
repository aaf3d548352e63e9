// Plain JavaScript on Node alone: it runs before anything is installed.
import fs from 'node:fs';
import path from 'node:path';

/**
 * The address and port to serve the book in `data` at: loopback unless the workshop opened the book to its network in the
 * settings, or `FLITCHBOOK_HOST` says otherwise. Not `HOST`, which some shells export as the computer's own name. Throws,
 * in words, at a `PORT` that is none.
 */
export function whereToServe(data, env) {
  let open = false;
  try {
    open = JSON.parse(fs.readFileSync(path.join(data, 'serving.json'), 'utf8')).network === true;
  } catch {
    // No settings yet: loopback.
  }
  const host = env.FLITCHBOOK_HOST || (open ? '0.0.0.0' : '127.0.0.1');
  const said = (env.PORT ?? '').trim();
  const port = said === '' ? 3000 : Number(said);
  if (!/^\d*$/.test(said) || port < 1 || port > 65_535)
    throw new Error(`PORT is "${said}", which is no port. Give a whole number from 1 to 65535: PORT=3001 npm start`);
  return { host, port };
}
