import { defineConfig } from 'vitest/config';

/** Tests that drive a real Chromium: one file after another, since two would share two cores badly. */
export default defineConfig({
  test: {
    include: ['packages/*/test/browser/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    fileParallelism: false,
  },
});
