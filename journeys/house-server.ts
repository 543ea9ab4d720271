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
  /** Ends the process; its documents stay, and `begin` starts another at the same address. */
  readonly halt: () => Promise<void>;
  readonly begin: (settings?: Settings) => Promise<void>;
};

/** `COUNTERPOISE_...`, as whoever runs the server sets it. */
export type Settings = Readonly<Record<string, string>>;

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
      const [address] = /https?:\/\/127\.0\.0\.1:\d+/.exec(said) ?? [];
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

type Process = { readonly address: string; readonly end: () => Promise<void> };

const started = async (settings: Settings): Promise<Process> => {
  const child = spawn(process.execPath, [join(ROOT, 'server', 'main.ts')], {
    env: { ...process.env, ...settings },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const end = async (): Promise<void> => {
    child.kill('SIGTERM');
    await ended(child);
  };
  try {
    return { address: await addressOf(child), end };
  } catch (fault) {
    await end();
    throw fault;
  }
};

export const startHouseServer = async (settings: Settings = {}): Promise<HouseServer> => {
  if (!existsSync(PAGE)) {
    throw new Error('The screens are not built: npm test builds them before the journeys.');
  }
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-journey-'));
  const own = {
    COUNTERPOISE_PORT: String(await freePort()),
    COUNTERPOISE_TRUST_PORT: String(await freePort()),
    COUNTERPOISE_DATA: folder,
    ...settings,
  };
  const clean = (): void => rmSync(folder, { recursive: true, force: true });
  let running: Process;
  try {
    running = await started(own);
  } catch (fault) {
    clean();
    throw fault;
  }
  const halt = (): Promise<void> => running.end();
  return {
    address: running.address,
    halt,
    begin: async (more = {}) => {
      running = await started({ ...own, ...more });
    },
    stop: async () => {
      await halt();
      clean();
    },
  };
};
