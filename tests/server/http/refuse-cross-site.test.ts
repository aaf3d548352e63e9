import { describe, expect, it } from 'vitest';
import { refuseCrossSite } from '@/app/_server/http/refuse-cross-site';

const JSON_TYPE = { 'content-type': 'application/json' };
const asked = (headers: Record<string, string>) =>
  refuseCrossSite(
    new Request('http://localhost:3000/api/weigh', { method: 'POST', headers: { host: 'localhost:3000', ...headers } }),
  );

// Fetch Standard (WHATWG living standard, from memory): Origin, Sec-Fetch-Site and the CORS-safelisted content types.
describe('a write over HTTP', () => {
  it('goes on from a page of this server, and from a program that is no browser', () => {
    expect(asked({ ...JSON_TYPE, origin: 'http://localhost:3000', 'sec-fetch-site': 'same-origin' })).toBeUndefined();
    expect(asked({ ...JSON_TYPE, 'content-type': 'application/json; charset=utf-8' })).toBeUndefined();
    expect(asked(JSON_TYPE)).toBeUndefined();
  });

  it.each([
    ['another site', { origin: 'https://elsewhere.example', 'sec-fetch-site': 'cross-site' }],
    ['another port of this computer', { origin: 'http://localhost:4000' }],
    ['a sandboxed frame', { origin: 'null' }],
    ['a neighbouring name', { 'sec-fetch-site': 'same-site' }],
  ])('is refused from %s', async (_, headers) => {
    const refused = asked({ ...JSON_TYPE, ...headers });
    expect(refused?.status).toBe(403);
    expect(await refused?.json()).toMatchObject({
      ok: false,
      problem: { code: 'cross-site', kept: 'Nothing was written.' },
    });
  });

  it('is refused in a type that a form of another site can send without asking', () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data']) {
      expect(asked({ 'content-type': type })?.status).toBe(415);
    }
    expect(asked({})?.status).toBe(415);
  });
});
