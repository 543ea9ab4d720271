/**
 * Screens for the browser, built to `build/web`. The development server sends questions on to a
 * running server, so that both work on the same documents.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { build, defineConfig, type Plugin, type Rolldown } from 'vite';
import { TERMS, thisInstallation } from '#installation';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const ROOMS = [
  'engine',
  'texts',
  'languages',
  'documents',
  'drawings',
  'events',
  'call',
  'sheets',
  'exchange',
  'archive',
  'differences',
  'fitting',
  'selfcheck',
  'validation',
];
const PURE = new RegExp(
  `[\\\\/](${ROOMS.join('|')})[\\\\/][^?]*\\.ts$|node_modules[\\\\/]zod[\\\\/]`,
);

/** The pure rooms do nothing when they are opened, so what no screen asks for stays out. */
const treeshake = { moduleSideEffects: (id: string): boolean => !PURE.test(id) };

/** The server that answers while these screens are worked on. */
const ANSWERS = `http://127.0.0.1:${process.env['COUNTERPOISE_PORT'] ?? 4747}`;

const installation = thisInstallation();

/** The worker at one address for good, and the one that takes it away from a device again. */
const WORKERS = { 'sw.js': 'offline/worker.ts', 'sw-gone.js': 'offline/worker-gone.ts' };

/** One file without imports: not every browser takes a module for a worker of this kind. */
const workerCode = async (source: string): Promise<string> => {
  const made = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      copyPublicDir: false,
      target: 'es2023',
      rolldownOptions: { input: here(source), output: { format: 'iife' } },
    },
  });
  const [chunk] = 'output' in made ? made.output : [];
  if (chunk === undefined) throw new Error(`defect: nothing was made of ${source}`);
  return chunk.code;
};
const PAGE = 'index.html';

const byLetters = (one: string, other: string): number => (one < other ? -1 : 1);

const contentIn = (bundle: Rolldown.OutputBundle, file: string): string | Uint8Array => {
  const made = bundle[file];
  if (made === undefined) return readFileSync(here(`public/${file}`));
  return made.type === 'chunk' ? made.code : made.source;
};

/** Enough to tell builds apart by eye; a collision by chance is 1 in 10¹⁴. */
const LETTERS = 12;

/**
 * Names the build by what is in its files. The page has the name in its head, the server reads it
 * from `build.json`, and the worker keeps what stands in its list: all of it, so that every screen
 * opens without the server.
 */
const named: Plugin = {
  name: 'counterpoise: name of the build',
  apply: 'build',
  generateBundle: {
    order: 'post',
    async handler(_options, bundle) {
      const files = [...Object.keys(bundle), ...readdirSync(here('public'))].sort(byLetters);
      const hash = createHash('sha256');
      for (const file of files) hash.update(`${file}\0`).update(contentIn(bundle, file));
      const workers = await Promise.all(
        Object.entries(WORKERS).map(async ([fileName, source]) => ({
          fileName,
          code: await workerCode(source),
        })),
      );
      for (const { code } of workers) hash.update(code);
      const page = bundle[PAGE];
      const own = hash.digest('hex').slice(0, LETTERS);
      if (page?.type !== 'asset') throw new Error('defect: no page');
      const head = `  <meta name="counterpoise-build" content="${own}" />\n  </head>`;
      page.source = String(page.source).replace('</head>', head);
      const list = JSON.stringify({ build: own, files });
      for (const { fileName, code } of workers) {
        const source = code.replaceAll('THIS_BUILD', () => list);
        this.emitFile({ type: 'asset', fileName, source });
      }
      const manifest = JSON.stringify({ build: own, terms: TERMS, files });
      this.emitFile({ type: 'asset', fileName: 'build.json', source: manifest });
    },
  },
};

export default defineConfig({
  root: here('.'),
  base: '/',
  plugins: [react(), named],
  // Which copy of the program the screens are made from, for the self-check that they run.
  define: {
    BUILT_FROM: JSON.stringify({ version: installation.version, build: installation.build }),
  },
  build: {
    outDir: here('../build/web'),
    // Pages that are open load parts of their own build yet: `web-build.ts` says what may go.
    emptyOutDir: false,
    target: 'es2023',
    // A font inside the style sheet would be loaded by everybody, also where it is not drawn.
    assetsInlineLimit: 0,
    // The first picture does not carry the names of what later screens share: they ask for it.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_file, parts, { hostType }) =>
        hostType === 'html' ? parts : parts.filter((part) => part.endsWith('.css')),
    },
    rolldownOptions: { treeshake },
  },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  server: {
    host: '127.0.0.1',
    proxy: {
      // The server refuses pages of other origins, so it is asked under its own name.
      '/api': {
        target: ANSWERS,
        changeOrigin: true,
        headers: { origin: ANSWERS },
      },
    },
  },
});
