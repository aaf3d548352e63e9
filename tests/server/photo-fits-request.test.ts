import { describe, expect, it } from 'vitest';
import config from '@/next.config';
import { MOST_PHOTO_BYTES } from '@/shared/photos/photo-limits';

describe('the largest photo that is taken', () => {
  // Next cuts a body off, without a word, at 10 MB for the proxy, which reads it before the action does
  // (nextjs.org/docs, proxyClientMaxBodySize), and refuses one of more than 1 MB for an action (serverActions.bodySizeLimit).
  it('fits a request, with the form around it', () => {
    const { proxyClientMaxBodySize, serverActions } = config.experimental ?? {};
    for (const limit of [proxyClientMaxBodySize, serverActions?.bodySizeLimit]) {
      const megabytes = Number(/^(\d+)mb$/.exec(String(limit))?.[1]);
      expect(megabytes * 1024 * 1024).toBeGreaterThanOrEqual(MOST_PHOTO_BYTES + 1024 * 1024);
    }
  });
});
