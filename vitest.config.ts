import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'demo/**/*.test.ts', 'test/**/*.test.ts'],
    pool: 'threads',
    maxWorkers: 2,
    testTimeout: 240_000,
    hookTimeout: 300_000,
    // On a machine that others share, a browser may be starved past every patience: once more, and the report says so.
    retry: process.env.CI ? 1 : 0,
  },
});
