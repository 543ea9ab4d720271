/** A server for each journey: a free port, an empty folder for its data, the built screens. */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..');
const PAGE = join(ROOT, 'build', 'web', 'index.html');
/** A second where nothing else runs. */
const START_MS = 120_000;

export type HouseServer = {
  /** `http://127.0.0.1:40123` */
  readonly address: string;
  readonly stop: () => Promise<void>;
};

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const place = probe.address();
      const port = typeof place === 'object' && place !== null ? place.port : 0;
      probe.close(() => resolve(port));
    });
  });

/** Resolves with the address that the server prints; rejects with what it said instead. */
const addressOf = (child: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    const timer = setTimeout(() => reject(new Error(`no address in time: ${said}`)), START_MS);
    const hear = (chunk: Buffer): void => {
      said += chunk.toString();
      const [address] = /http:\/\/127\.0\.0\.1:\d+/.exec(said) ?? [];
      if (address === undefined) return;
      clearTimeout(timer);
      resolve(address);
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    child.once('exit', (code) => {
      clearTimeout(timer);
      reject(new Error(`the server ended with ${code}: ${said}`));
    });
  });

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve();
    else child.once('exit', () => resolve());
  });

export const startHouseServer = async (): Promise<HouseServer> => {
  if (!existsSync(PAGE)) {
    throw new Error('The screens are not built: npm test builds them before the journeys.');
  }
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-journey-'));
  const child = spawn(process.execPath, [join(ROOT, 'server', 'main.ts')], {
    env: {
      ...process.env,
      COUNTERPOISE_PORT: String(await freePort()),
      COUNTERPOISE_DATA: folder,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const clean = async (): Promise<void> => {
    child.kill('SIGTERM');
    await ended(child);
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    return { address: await addressOf(child), stop: clean };
  } catch (fault) {
    await clean();
    throw fault;
  }
};
