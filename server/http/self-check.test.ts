import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CASES, type ValidationCase } from '#selfcheck';
import { type Databases, openDatabases } from '../databases.ts';
import { demoDocuments } from '../demo.ts';
import { type SelfCheck, startSelfCheck } from '../self-check.ts';
import { buildApp } from './app.ts';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const now = (): Date => new Date('2026-11-25T12:00:00Z');
const installation = { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' };
const host = '127.0.0.1:4747';

const WRONG: ValidationCase = {
  id: 'VAL-BAL-99',
  title: 'A case that is deliberately wrong',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 0.005,
  run: () => [0.001, 0.02],
};

let folder: string;
let databases: Databases;
let apps: FastifyInstance[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-self-check-'));
  databases = openDatabases(folder, demoDocuments(examples), now);
});
afterEach(async () => {
  await Promise.all(apps.map((app) => app.close()));
  apps = [];
  databases.close();
  rmSync(folder, { recursive: true });
});

const served = async (selfCheck: SelfCheck) => {
  const app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
  apps.push(app);
  return (url: string) => app.inject({ url, headers: { host } });
};

const CARD = '/api/sheet.pdf?house=kestlemere&show=vell&sheet=balance-card/11&paper=a4';
const TAKE_OFF = CARD.replace('balance-card/11', 'take-off');

describe('the self-check of a server', () => {
  it('says how far it is before it says what it found', async () => {
    const selfCheck = startSelfCheck({ installation, now });
    const ask = await served(selfCheck);
    const first = selfCheck.record();
    expect(first.state).toEqual({ is: 'running', done: 0, total: CASES.length });
    await selfCheck.ended;
    const { installation: which, state } = (await ask('/api/self-check')).json();
    expect(which).toEqual(installation);
    expect(state.is).toBe('done');
    expect(state.report.failed).toEqual([]);
  });

  it('lets requests through between two cases', async () => {
    let requestsDuring = 0;
    const slow = Array.from({ length: 50 }, () => ({ ...WRONG, run: () => [0] }));
    const selfCheck = startSelfCheck({ installation, now, cases: slow });
    const ask = await served(selfCheck);
    while (selfCheck.record().state.is === 'running') {
      await new Promise((resolve) => setImmediate(resolve));
      await ask('/api/database');
      requestsDuring += 1;
    }
    expect(requestsDuring).toBeGreaterThan(slow.length / 2);
    await selfCheck.ended;
  });

  it('runs no further when it is stopped', async () => {
    const selfCheck = startSelfCheck({ installation, now });
    selfCheck.stop();
    await selfCheck.ended;
    expect(selfCheck.record().state).toMatchObject({ is: 'running', done: 0 });
  });

  it('says a failed case, with what is wrong with it', async () => {
    const selfCheck = startSelfCheck({ installation, now, cases: [...CASES, WRONG] });
    await selfCheck.ended;
    const { state } = (await (await served(selfCheck))('/api/self-check')).json();
    expect(state.report.failed).toEqual([
      {
        id: 'VAL-BAL-99',
        title: 'A case that is deliberately wrong',
        calculation: 'balance',
        fault: '0.02 kg is over 0.005 kg',
      },
    ]);
  });

  it('changes the sheets that rest on what failed, and no others', async () => {
    const [well, ill] = [[], [WRONG]].map((cases) => startSelfCheck({ installation, now, cases }));
    if (well === undefined || ill === undefined) throw new Error('two were started');
    await Promise.all([well.ended, ill.ended]);
    const [askWell, askIll] = [await served(well), await served(ill)];
    // The same sheet gives the same bytes, so that other bytes are another sheet.
    expect((await askWell(CARD)).rawPayload.equals((await askWell(CARD)).rawPayload)).toBe(true);
    expect((await askIll(CARD)).rawPayload.equals((await askWell(CARD)).rawPayload)).toBe(false);
    const plain = (await askWell(TAKE_OFF)).rawPayload;
    expect((await askIll(TAKE_OFF)).rawPayload.equals(plain)).toBe(true);
  });

  it('prints the report without a house, and as a sheet of one', async () => {
    const selfCheck = startSelfCheck({ installation, now });
    await selfCheck.ended;
    const ask = await served(selfCheck);
    const alone = await ask('/api/self-check.pdf?paper=letter&by=TD');
    expect(alone.headers['content-type']).toBe('application/pdf');
    expect(alone.headers['content-disposition']).toContain('self-check.pdf');
    expect((await ask('/api/self-check.pdf?paper=a3')).statusCode).toBe(400);
    const csv = await ask('/api/sheet.csv?house=kestlemere&show=vell&sheet=self-check');
    expect(csv.body).toMatch(/balance/);
  });
});
