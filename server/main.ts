import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { thisInstallation } from '#installation';
import { openDatabases } from './databases.ts';
import { demoDocuments } from './demo.ts';
import { buildApp } from './http/index.ts';
import { startSelfCheck } from './self-check.ts';

/** Where `npm start` serves: this machine only, at one port that a person can remember. */
const HOST = '127.0.0.1';
const PORT = Number(process.env['COUNTERPOISE_PORT'] ?? 4747);

const root = join(import.meta.dirname, '..');
const now = (): Date => new Date();
const databases = openDatabases(
  process.env['COUNTERPOISE_DATA'] ?? join(root, '.data'),
  demoDocuments(join(root, 'examples')),
  now,
);
const webRoot = join(root, 'build', 'web');
if (!existsSync(webRoot)) {
  process.stderr.write('The screens are not built. Start with: npm start\n');
  process.exit(3);
}
const selfCheck = startSelfCheck({ installation: thisInstallation(), now });
const app = await buildApp({ databases, webRoot, now, selfCheck });

const stop = async (): Promise<void> => {
  selfCheck.stop();
  await app.close();
  databases.close();
  process.exit(0);
};
process.once('SIGINT', stop);
process.once('SIGTERM', stop);

try {
  await app.listen({ host: HOST, port: PORT });
  process.stdout.write(`Counterpoise is at http://${HOST}:${PORT} (Ctrl-C stops it)\n`);
} catch (fault) {
  const inUse = (fault as { code?: string }).code === 'EADDRINUSE';
  process.stderr.write(
    inUse
      ? `Port ${PORT} is taken. Stop what uses it, or set COUNTERPOISE_PORT to another.\n`
      : `The server could not start: ${String(fault)}\n`,
  );
  process.exit(3);
}
