/** A machine that its owner keeps open does an owner's work, and signs nothing. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type Databases, openDatabases } from '../databases.ts';
import { LITTLE, PASSPHRASE, taken } from '../stage-for-tests.ts';
import { buildApp } from './app.ts';

const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};
const now = (): Date => new Date('2026-11-28T10:00:00Z');

let folder: string;
let databases: Databases;
let app: FastifyInstance;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-open-'));
  databases = openDatabases(folder, [], now, { cost: LITTLE });
  app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
});
afterEach(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

const headers = { host: '127.0.0.1:4747' };

/** Takes back what there is not: a right is looked at before anything else of it. */
const withdraw = (commandId: string) =>
  app.inject({
    method: 'POST',
    url: '/api/commands',
    headers,
    payload: {
      commandId,
      device: 'rail-1',
      kind: 'withdrawn',
      target: 'set:11',
      seen: 0,
      payload: { seq: 1, event: 'none', why: 'counted again' },
      clientMs: now().getTime(),
    },
  });

const makeOwner = async (): Promise<void> => {
  const code = databases.auth().ownerCode() ?? '';
  const owner = { code, name: 'Ada Frost', passphrase: PASSPHRASE };
  taken(await databases.auth().makeOwner(owner, '127.0.0.1'));
  databases.auth().setMine(true);
};

it('signs as long as nobody has a name, and then no longer', async () => {
  expect((await withdraw('first-try-1')).statusCode).not.toBe(403);
  await makeOwner();
  expect((await app.inject({ url: '/api/people/invitations', headers })).statusCode).toBe(200);
  expect((await withdraw('second-try-2')).statusCode).toBe(403);
});

it('is opened by its owner and not by a program of theirs', async () => {
  await makeOwner();
  const { token } = taken(
    databases.auth().addProgram({ kind: 'thisMachine' }, { name: 'x', role: 'run' }),
  );
  const answer = await app.inject({
    method: 'PUT',
    url: '/api/people/this-machine',
    headers: { ...headers, authorization: `Bearer ${token}` },
    payload: { isMine: false },
  });
  expect(answer.statusCode).toBe(403);
  expect(databases.auth().isMine()).toBe(true);
});
