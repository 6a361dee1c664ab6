import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: [
      'packages/*/src/**/*.test.ts',
      'packages/*/test/**/*.test.ts',
      'validation/**/*.test.ts',
      'test/**/*.test.ts',
    ],
    exclude: ['**/node_modules/**', 'packages/*/test/browser/**'],
    testTimeout: 60_000,
    maxWorkers: 2,
    setupFiles: ['test/seed.ts'],
  },
});
