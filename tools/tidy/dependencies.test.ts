import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dependencies } from './dependencies.ts';

/** Small houses on a real disk: the checker reads files, so it gets files. */
const roots: string[] = [];

const newRoot = (): string => {
  const root = mkdtempSync(join(tmpdir(), 'floors-'));
  roots.push(root);
  return root;
};

afterAll(() => {
  for (const root of roots) rmSync(root, { recursive: true });
});

const HOUSE: Readonly<Record<string, string>> = {
  'package.json': JSON.stringify({
    type: 'module',
    imports: {
      '#outcome': './engine/outcome/index.ts',
      '#balance': './engine/balance/index.ts',
      '#motion': './engine/motion/index.ts',
      '#assessment': './engine/assessment/index.ts',
      '#rules': './engine/rules/index.ts',
      '#documents': './documents/index.ts',
      '#selfcheck': './selfcheck/index.ts',
    },
  }),
  'tsconfig.base.json': JSON.stringify({
    compilerOptions: { module: 'NodeNext', allowImportingTsExtensions: true, noEmit: true },
  }),
  'engine/outcome/index.ts': 'export const ok = 1;\nexport type Ok = number;\n',
  'engine/balance/index.ts': "export { curve } from './curve.ts';\n",
  'engine/balance/curve.ts': "import { ok } from '#outcome';\nexport const curve = ok;\n",
  'engine/motion/index.ts': 'export const fall = 1;\n',
  'engine/assessment/index.ts': 'export type Set = number;\nexport const assess = 1;\n',
  'engine/rules/index.ts': "import type { Set } from '#assessment';\nexport type Rule = Set;\n",
  'documents/index.ts': 'export const read = 1;\n',
  'selfcheck/index.ts': "export { CASES } from '../validation/cases.ts';\n",
  'server/index.ts': 'export const serve = 1;\n',
  'cli/main.ts': "import { curve } from '#balance';\nexport const main = curve;\n",
  'validation/cases.ts': "import { curve } from '#balance';\nexport const CASES = [curve];\n",
  'validation/case.test.ts': "import { curve } from '#balance';\nexport const c = curve;\n",
};

/** The faults of the house with some files changed, as `file:line rule`. */
const faultsWith = async (changes: Readonly<Record<string, string>>) => {
  const files = { ...HOUSE, ...changes };
  const root = newRoot();
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  const sources = Object.entries(files).map(([path, text]) => ({ path, text }));
  const faults = await dependencies({ root, sources });
  return faults.map(({ file, line, what }) => `${file}:${line} ${/\((.*)\)$/.exec(what)?.[1]}`);
};

/** What is planted, where, as which text, and the rule that names it. */
const PLANTED = [
  ['a door on a higher floor', 'engine/outcome/index.ts', "import '#balance';", 'stairs-outcome'],
  ['a door on its own floor', 'engine/motion/index.ts', "import '#balance';", 'stairs-motion'],
  ['a calculator, from the judge', 'engine/rules/a.ts', "import '#balance';", 'stairs-rules'],
  ['a calculator, from a file', 'documents/a.ts', "import '#balance';", 'stairs-documents'],
  ['the server, from the cli', 'cli/a.ts', "import '../server/index.ts';", 'stairs-cli'],
  [
    'values of what it judges',
    'engine/rules/a.ts',
    "import { assess } from '#assessment';\nexport const a = assess;",
    'types-only-rules',
  ],
  ['a window', 'cli/b.ts', "import '../engine/balance/curve.ts';", 'window'],
  ['a door by its path', 'cli/c.ts', "import '../engine/balance/index.ts';", 'door-by-name'],
  [
    'a window, from a validation case',
    'validation/a.test.ts',
    "import '../engine/balance/curve.ts';",
    'window-from-outside',
  ],
  ['an outbuilding', 'cli/d.ts', "import '../tools/a.ts';", 'outbuilding'],
  ['the cases, from elsewhere', 'cli/e.ts', "import '../validation/cases.ts';", 'outbuilding'],
  [
    'more of validation, from the self-check',
    'selfcheck/a.ts',
    "import '../validation/milp.ts';",
    'outbuilding-cases',
  ],
  [
    'Node, below a case of the self-check',
    'validation/cases.ts',
    "import './milp.ts';",
    'case-package',
  ],
  [
    'a room above the engine, below a case of the self-check',
    'validation/cases.ts',
    "import '#documents';",
    'case-room',
  ],
  ['Node, in a pure room', 'engine/motion/a.ts', "import 'node:fs';", 'packages-motion'],
  ['a module that is not there', 'cli/f.ts', "import './absent.ts';", 'unresolved'],
  ['a test', 'cli/g.ts', "import '../validation/case.test.ts';", 'test-from-code'],
  ['a contract', 'cli/h.ts', "import '../engine/balance/a.contract.ts';", 'test-from-code'],
  ['Node, in the browser', 'web/a.ts', "import 'node:fs';", 'browser'],
  ['a step up inside server', 'server/log/a.ts', "import '../live/b.ts';", 'server-stair-log'],
  ['auth, from live', 'server/live/a.ts', "import '../auth/b.ts';", 'server-stair-live'],
] as const;

/** What the planted files lean on. */
const OTHERS = {
  'tools/a.ts': '',
  'engine/balance/a.contract.ts': '',
  'validation/milp.ts': "import 'node:fs';",
  'server/live/b.ts': '',
  'server/auth/b.ts': '',
};

type Planted = (typeof PLANTED)[number];

/** The checker takes its time over a house, so it gets few: each file stands in one as planted. */
const houses: Planted[][] = [];
for (const planted of PLANTED) {
  const isFree = (house: Planted[]): boolean => house.every(([, path]) => path !== planted[1]);
  const free = houses.find(isFree);
  if (free === undefined) houses.push([planted]);
  else free.push(planted);
}

describe('floors and doors', () => {
  it('takes a house in order', async () => {
    expect(await faultsWith({})).toEqual([]);
  });

  describe.each(houses.map((house) => ({ house })))(
    'in a house with $house.length planted',
    ({ house }) => {
      let faults: readonly string[] = [];
      beforeAll(async () => {
        const texts = house.map(([, path, text]) => [path, text] as const);
        faults = await faultsWith({ ...OTHERS, ...Object.fromEntries(texts) });
      });

      it.each(house)('refuses %s', (_, path, _text, rule) => {
        expect(faults).toContain(`${path}:1 ${rule}`);
      });
    },
  );

  it('refuses a cycle', async () => {
    const faults = await faultsWith({
      'cli/a.ts': "import './b.ts';",
      'cli/b.ts': "import './a.ts';",
    });
    expect(faults).toContain('cli/a.ts:1 cycle');
  });

  it('does not pass for a checker that read nothing', async () => {
    const faults = await dependencies({
      root: newRoot(),
      sources: [{ path: 'engine/balance/index.ts', text: '' }],
    });
    expect(faults).toHaveLength(1);
  });
});
