import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { thisInstallation } from '#installation';
import { type Databases, openDatabases } from './databases.ts';
import { demoDocuments } from './demo.ts';
import { buildApp, diskOf, logTo } from './http/index.ts';
import { startWords } from './lan/index.ts';
import { lanStartOf } from './lan-settings.ts';
import { lastBackupAt, NotOpened } from './log/index.ts';
import { startSelfCheck } from './self-check.ts';
import { PortTaken, startServing } from './serving.ts';
import { updatesOf } from './updates.ts';

const root = join(import.meta.dirname, '..');
const now = (): Date => new Date();
const dataFolder = process.env['COUNTERPOISE_DATA'] ?? join(root, '.data');
const lan = lanStartOf(process.env, dataFolder, now);
if (typeof lan === 'string') {
  process.stderr.write(`${lan}\n`);
  process.exit(3);
}
const { listening, port, trustPort, logLevel: level } = lan;
const log = logTo({ level, now, line: (text) => void process.stderr.write(text) });
const openOrEnd = (): Databases => {
  try {
    return openDatabases(dataFolder, demoDocuments(join(root, 'examples')), now, {
      sayCode: (code) => void process.stdout.write(`Code for an owner, good once: ${code}\n`),
      wantsOwnerCode: process.env['COUNTERPOISE_NEW_OWNER'] === 'yes',
    });
  } catch (fault) {
    if (!(fault instanceof NotOpened)) throw fault;
    process.stderr.write(`${fault.message}\n`);
    process.exit(3);
  }
};
const databases = openOrEnd();
const updates = updatesOf(process.env, root);
if (typeof updates === 'string') {
  process.stderr.write(`${updates}\n`);
  process.exit(3);
}
if (!existsSync(updates.webRoot)) {
  process.stderr.write('The screens are not built. Start with: npm start\n');
  process.exit(3);
}
const selfCheck = startSelfCheck({ installation: thisInstallation(), now });
const health = {
  disk: () => diskOf(dataFolder),
  lastBackupAt: () => lastBackupAt(join(dataFolder, `${databases.inHand()}.sqlite`)),
};
const parts = { ...updates, databases, now, selfCheck, listening, log, health };
const app = await buildApp(parts);
const serving = await startServing({ app, listening, port, trustPort, log }).catch(
  (fault: unknown) => {
    process.stderr.write(
      fault instanceof PortTaken
        ? `${fault.message} Stop what uses it, or set COUNTERPOISE_PORT to another.\n`
        : `The server could not start: ${String(fault)}\n`,
    );
    process.exit(3);
  },
);
process.stdout.write(startWords(listening, { isTerminal: process.stdout.isTTY }));

const stop = async (): Promise<void> => {
  selfCheck.stop();
  await serving();
  databases.close();
  process.exit(0);
};
process.once('SIGINT', stop);
process.once('SIGTERM', stop);
