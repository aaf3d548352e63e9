import path from 'node:path';
import { defineConfig } from 'vitest/config';

// No test is of the book that the surroundings name.
delete process.env.FLITCHBOOK_DATABASE_URL;

const alias = { '@': path.resolve(import.meta.dirname) };
const setupFiles = ['tests/support/seed.ts'];
const inZone = (name: string, zone: string) => ({
  resolve: { alias },
  test: { name, setupFiles, include: ['tests/shared/{calendar,shelf-life}/**/*.test.ts'], env: { TZ: zone } },
});

export default defineConfig({
  resolve: { alias },
  test: {
    testTimeout: 60_000,
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'rules',
          setupFiles,
          include: ['tests/{shared,reference,app}/**/*.test.ts'],
          testTimeout: 60_000,
        },
      },
      // Calendar rules must not depend on where the server stands.
      inZone('in-new-york', 'America/New_York'),
      inZone('in-kiritimati', 'Pacific/Kiritimati'),
      {
        resolve: { alias },
        test: {
          name: 'store',
          setupFiles,
          include: ['tests/{store,server}/**/*.test.ts'],
          exclude: ['tests/store/on-a-server/**'],
          testTimeout: 90_000,
          hookTimeout: 90_000,
        },
      },
      // The same book on PostgreSQL: whatever does not open the file itself.
      {
        resolve: { alias },
        test: {
          name: 'store-on-a-server',
          setupFiles,
          globalSetup: ['tests/support/postgresql-server.ts'],
          include: ['tests/{store,server}/**/*.test.ts'],
          exclude: ['tests/store/{append-only,migrations,prove,prove-facts,trouble}.test.ts'],
          env: { FLITCHBOOK_TEST_STORE: 'postgresql' },
          testTimeout: 90_000,
          hookTimeout: 90_000,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 240_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          // A journey that a busy machine let down is walked once more; one that fails twice has failed.
          retry: 1,
        },
      },
    ],
  },
});
