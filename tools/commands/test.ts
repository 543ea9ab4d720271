/**
 * `npm test`: everything that must hold. All steps run, also after one has failed, so that one
 * run shows all faults; the last line counts them.
 */
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { MEASURED_FILE } from '../../validation/record.ts';
import { CHROMIUM_ADVICE, ensureChromium } from '../running/chromium.ts';
import { ROOT, runNode } from '../running/program.ts';
import { wasStopped } from '../running/signals.ts';
import { typecheck, ZONES } from '../running/typecheck.ts';
import { type Count, runVitest } from '../running/vitest-run.ts';
import { buildWeb } from '../running/web-build.ts';

const PASSED: Count = { passed: 1, failed: 0, notRun: 0 };
const FAILED: Count = { passed: 0, failed: 1, notRun: 0 };

type Step = { readonly name: string; readonly work: () => Promise<Count> };

const hasJourneys = (): boolean => {
  const folder = join(ROOT, 'journeys');
  return existsSync(folder) && readdirSync(folder).some((name) => !name.startsWith('.'));
};

const typecheckAll = async (): Promise<Count> => {
  const faults = (await Promise.all(ZONES.map(typecheck))).filter((text) => text !== '');
  process.stdout.write(faults.join('\n'));
  return faults.length === 0 ? PASSED : FAILED;
};

const script = async (...args: readonly string[]): Promise<Count> =>
  (await runNode(args, { shown: true })).code === 0 ? PASSED : FAILED;

const unitAndValidation = (): Promise<Count> => {
  rmSync(MEASURED_FILE, { force: true });
  return runVitest({ projects: ['unit', 'validation'], record: true });
};

const journeys = async (): Promise<Count> => {
  const chromium = await ensureChromium();
  if (chromium === undefined) {
    process.stderr.write(`${CHROMIUM_ADVICE}\n`);
    return FAILED;
  }
  process.env.CHROMIUM = chromium;
  return runVitest({ projects: ['journeys'], record: false });
};

/** The papers come after the validation cases, whose errors they print. */
const STEPS: readonly Step[] = [
  { name: 'types of the three zones', work: typecheckAll },
  { name: 'tidy', work: () => script('tools/tidy/main.ts') },
  { name: 'tests beside the code, and validation', work: unitAndValidation },
  {
    name: 'generated papers',
    work: () => script('tools/papers/main.ts', '--check', '--measured'),
  },
  {
    name: 'build of the screens',
    work: async () => ((await buildWeb()) === 0 ? PASSED : FAILED),
  },
  ...(hasJourneys() ? [{ name: 'journeys in a browser', work: journeys }] : []),
];

const seconds = (since: number): string => `${((Date.now() - since) / 1000).toFixed(1)} s`;

const runStep = async ({ name, work }: Step, place: string): Promise<Count> => {
  process.stdout.write(`\n[${place}] ${name} ...\n`);
  const began = Date.now();
  const count = await work();
  const verdict = count.failed === 0 ? 'passed' : 'FAILED';
  process.stdout.write(`[${place}] ${name}: ${verdict} in ${seconds(began)}\n`);
  return count;
};

const main = async (): Promise<void> => {
  const began = Date.now();
  let [passed, failed, notRun] = [0, 0, 0];
  for (const [index, step] of STEPS.entries()) {
    const count = await runStep(step, `${index + 1}/${STEPS.length}`);
    passed += count.passed;
    failed += count.failed;
    notRun += count.notRun;
    if (wasStopped()) {
      process.stdout.write('Stopped.\n');
      process.exitCode = 130;
      return;
    }
  }
  if (notRun > 0) process.stdout.write(`\n${notRun} tests were switched off: they must run.\n`);
  process.stdout.write(`\nall in ${seconds(began)}\n${passed} passed, ${failed} failed\n`);
  process.exitCode = failed === 0 && notRun === 0 ? 0 : 1;
};

await main();
