/**
 * Screens for the browser, built to `build/web`. The development server sends questions on to a
 * running server, so that both work on the same documents.
 */
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { thisInstallation } from '#installation';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const ROOMS = [
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
  'validation',
];
const PURE = new RegExp(
  `[\\\\/](${ROOMS.join('|')})[\\\\/][^?]*\\.ts$|node_modules[\\\\/]zod[\\\\/]`,
);

/** The pure rooms do nothing when they are opened, so what no screen asks for stays out. */
const treeshake = { moduleSideEffects: (id: string): boolean => !PURE.test(id) };

/** The server that answers while these screens are worked on. */
const ANSWERS = `http://127.0.0.1:${process.env['COUNTERPOISE_PORT'] ?? 4747}`;

const { version, build } = thisInstallation();

export default defineConfig({
  root: here('.'),
  base: '/',
  plugins: [react()],
  // Which copy of the program the screens are made from, for the self-check that they run.
  define: { BUILT_FROM: JSON.stringify({ version, build }) },
  build: {
    outDir: here('../build/web'),
    emptyOutDir: true,
    target: 'es2023',
    // A font inside the style sheet would be loaded by everybody, also where it is not drawn.
    assetsInlineLimit: 0,
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
