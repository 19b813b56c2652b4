import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/bench/**', 'node_modules/**'],
    testTimeout: 180_000,
    hookTimeout: 180_000,
    pool: 'forks',
    setupFiles: ['tests/seed.ts'],
  },
});
