/**
 * The tests that try mutants, by the patterns in MUTATION_TESTS. The mutation tool takes no
 * projects, so this is a plain configuration beside `vitest.config.ts`.
 */
import { defineConfig } from 'vitest/config';

const patterns = (process.env.MUTATION_TESTS ?? 'engine/**/*.test.ts').split(',');

export default defineConfig({
  test: {
    include: patterns,
    exclude: ['**/node_modules/**', 'build/**'],
    testTimeout: 30_000,
  },
});
