import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'demo/**/*.test.ts', 'test/**/*.test.ts'],
    pool: 'threads',
    maxWorkers: 2,
    testTimeout: 240_000,
    hookTimeout: 300_000,
  },
});
