import http from 'node:http';

/** One request to the server, and what must be true of its answer for its time to count. */
export type Question = { path: string; body?: unknown };

export type Told = { ms: number; json: Record<string, unknown> };

const agent = new http.Agent({ keepAlive: true, maxSockets: 1 });

/** Asks over a connection kept to each server and answers how long it took to the last byte. Throws on anything but a good answer. */
export function ask(origin: string, { path, body }: Question): Promise<Told> {
  const url = new URL(path, origin);
  const text = body === undefined ? undefined : JSON.stringify(body);
  const headers = text === undefined ? {} : { 'content-type': 'application/json', origin };
  return new Promise((resolve, reject) => {
    const begun = performance.now();
    const request = http.request(url, { agent, method: text === undefined ? 'GET' : 'POST', headers }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('error', reject);
      response.on('end', () => {
        const ms = performance.now() - begun;
        const said = Buffer.concat(chunks).toString('utf8');
        if (response.statusCode !== 200)
          return reject(new Error(`${path}: ${response.statusCode} ${said.slice(0, 300)}`));
        resolve({ ms, json: JSON.parse(said) as Record<string, unknown> });
      });
    });
    request.on('error', reject);
    request.end(text);
  });
}

/** Ends the kept connection, so that the server can stop. */
export function hangUp(): void {
  agent.destroy();
}
