/**
 * Projects: `unit` beside the code, `validation` against oracles from outside, `journeys` in a
 * real browser. Doors (`#balance`) resolve through the imports map of package.json.
 */
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tools/running/longest-first.ts';

const NEVER = ['**/node_modules/**', 'build/**', '.runtime/**'];

const SOURCES = [
  'engine',
  'texts',
  'languages',
  'documents',
  'events',
  'call',
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
  'simulation',
];

/** The rooms keep nothing between calls, so files share what they import: a third of the time. */
const shared = { exclude: NEVER, isolate: false };

/** What is right is asked there, not how soon: a busy machine takes its time. */
const inBrowser = {
  exclude: NEVER,
  testTimeout: 300_000,
  hookTimeout: 180_000,
  expect: { poll: { interval: 100, timeout: 60_000 } },
};

export default defineConfig({
  test: {
    exclude: NEVER,
    // The runner itself does little: each processor has a file to work on.
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          ...shared,
          name: 'unit',
          include: SOURCES.map((room) => `${room}/**/*.test.{ts,tsx}`),
          testTimeout: 120_000,
        },
      },
      {
        test: {
          ...shared,
          name: 'validation',
          include: ['validation/**/*.test.ts'],
          testTimeout: 120_000,
        },
      },
      {
        test: {
          ...inBrowser,
          name: 'journeys',
          include: ['journeys/**/*.test.ts'],
        },
      },
    ],
  },
});
