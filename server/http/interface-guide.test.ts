/** The examples of docs/guides/interface.md, run in their order against the demo. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Databases, openDatabases } from '../databases.ts';
import { demoDocuments } from '../demo.ts';
import { LITTLE } from '../stage-for-tests.ts';
import { buildApp } from './app.ts';

const root = join(import.meta.dirname, '..', '..');
const guide = readFileSync(join(root, 'docs', 'guides', 'interface.md'), 'utf8');
const FENCES = /```http\n([\s\S]*?)```\n\n```json\n([\s\S]*?)```/g;

type Example = { readonly request: string; readonly status: number; readonly answer: object };

const examples = [...guide.matchAll(FENCES)].map(([, request = '', expected = '']): Example => {
  const { status, answer } = JSON.parse(expected) as Omit<Example, 'request'>;
  return { request, status, answer };
});

/** As it stands in the guide: a line, headers, an empty line, a body. */
const readRequest = (text: string, token: string): InjectOptions => {
  const [head = '', body = ''] = text.split('\n\n');
  const [line = '', ...fields] = head.trim().split('\n');
  const [method = '', url = ''] = line.split(' ');
  const headers = fields.map((field) => {
    const [name = '', value = ''] = field.split(': ');
    return [name, value.replace('TOKEN', token)] as const;
  });
  return {
    method: method as 'GET',
    url,
    headers: { host: '127.0.0.1:4747', ...Object.fromEntries(headers) },
    ...(body === '' ? {} : { payload: body }),
    // From the network, where nothing but the token lets a program in.
    remoteAddress: '192.168.7.50',
  };
};

const now = (): Date => new Date('2026-11-25T12:00:00Z');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

let folder = '';
let databases: Databases;
let app: FastifyInstance;
let token = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-guide-'));
  const demo = demoDocuments(join(root, 'examples'));
  databases = openDatabases(folder, demo, now, { cost: LITTLE });
  app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
  const made = await app.inject({
    method: 'POST',
    url: '/api/tokens',
    headers: { host: '127.0.0.1:4747' },
    payload: { name: 'the guide', role: 'run' },
  });
  token = made.json().token;
});
afterAll(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

describe('the guide for other programs', () => {
  it('has each request with its answer', () => {
    expect(examples.length).toBe(guide.split('```http').length - 1);
    expect(examples.length).toBeGreaterThan(5);
  });

  it.each(examples)('$request', async ({ request, status, answer }) => {
    const got = await app.inject(readRequest(request, token));
    expect(got.statusCode).toBe(status);
    expect(got.json()).toMatchObject(answer);
  });
});
