import { defineConfig } from 'vitest/config';

/** Tests that drive a real Chromium: one file after another, since two would share two cores badly. */
export default defineConfig({
  test: {
    include: ['packages/*/test/browser/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    fileParallelism: false,
    // A page on a busy machine answers late; what it answers is what is tested.
    expect: { poll: { timeout: 20_000 } },
  },
});
