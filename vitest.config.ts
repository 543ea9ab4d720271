/**
 * Three projects: `unit` beside the code, `validation` against oracles from outside, `journeys`
 * in a real browser. Doors (`#balance`) resolve through the imports map of package.json.
 */
import { defineConfig } from 'vitest/config';

const NEVER = ['**/node_modules/**', 'build/**', '.runtime/**'];

const SOURCES = [
  'engine',
  'texts',
  'languages',
  'documents',
  'drawings',
  'sheets',
  'exchange',
  'archive',
  'differences',
  'fitting',
  'selfcheck',
  'print',
  'installation',
  'server',
  'web',
  'cli',
  'tools',
  'examples',
  'pins',
  'bench',
];

export default defineConfig({
  test: {
    exclude: NEVER,
    projects: [
      {
        test: {
          name: 'unit',
          include: SOURCES.map((room) => `${room}/**/*.test.{ts,tsx}`),
          exclude: NEVER,
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'validation',
          include: ['validation/**/*.test.ts'],
          exclude: NEVER,
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'journeys',
          include: ['journeys/**/*.test.ts'],
          exclude: NEVER,
          testTimeout: 180_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
