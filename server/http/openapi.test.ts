import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Validator } from '@seriousme/openapi-schema-validator';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { JsonObject } from '#documents';
import { type Databases, openDatabases } from '../databases.ts';
import { demoDocuments } from '../demo.ts';
import { buildApp } from './app.ts';
import { SHAPES } from './openapi-shapes.ts';
import { ROUTE_WORDS } from './openapi-words.ts';

const now = (): Date => new Date('2026-11-25T12:00:00Z');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};
const examples = join(import.meta.dirname, '..', '..', 'examples');

let folder = '';
let databases: Databases;
let app: FastifyInstance;
const ajv = new Ajv2020({ strict: false, validateFormats: false });
let api: JsonObject & { readonly paths: Record<string, Record<string, JsonObject>> };

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-openapi-'));
  databases = openDatabases(folder, demoDocuments(examples), now);
  app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
  api = (await ask({ url: '/api/openapi.json' })).json();
  ajv.addSchema({ ...api, $id: 'https://api.test/' });
});
afterAll(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

const ask = (options: InjectOptions) =>
  app.inject({ ...options, headers: { host: '127.0.0.1:4747', ...options.headers } });

const operations = () =>
  Object.entries(api.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );

describe('the description of the interface', () => {
  it('is OpenAPI 3.1 to a validator from outside', async () => {
    const { valid, errors } = await new Validator().validate(structuredClone(api));
    expect(errors).toBeUndefined();
    expect(valid).toBe(true);
    expect(api['openapi']).toBe('3.1.1');
  });

  it('has every route of the program, in words, and no other', () => {
    const described = operations().map(
      ({ path, method }) => `${method.toUpperCase()} ${path.replace(/\{(\w+)\}/g, ':$1')}`,
    );
    expect(new Set(described)).toEqual(new Set(Object.keys(ROUTE_WORDS)));
    expect(described.length).toBeGreaterThan(30);
    for (const name of described) expect(app.hasRoute(routeOf(name)), name).toBe(true);
  });

  it('gives each operation a name of its own, words, and what it needs', () => {
    const ids = operations().map(({ operation }) => operation['operationId']);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { operation } of operations()) {
      expect(operation['summary']).not.toBe('');
      expect(operation['description']).toMatch(/Needs /);
    }
  });

  it('uses each shape, and refers to none that is missing', () => {
    const text = JSON.stringify(api);
    const schemas = (api['components'] as { schemas: JsonObject }).schemas;
    for (const name of Object.keys(SHAPES)) {
      expect(text.includes(`"#/components/schemas/${name}"`), name).toBe(true);
    }
    for (const [, pointer = ''] of text.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)) {
      const found = pointer
        .split('/')
        .reduce<unknown>(
          (at, part) => (at as Record<string, unknown> | undefined)?.[part],
          schemas,
        );
      expect(found, pointer).toBeDefined();
    }
  });
});

const routeOf = (name: string) => {
  const [method = '', url = ''] = name.split(' ');
  return { method, url } as Parameters<FastifyInstance['hasRoute']>[0];
};

/** An answer is held against the shape that is described for its status, by Ajv. */
const faultsOf = (path: string, method: string, status: number, answer: unknown) => {
  const responses = api.paths[path]?.[method]?.['responses'] as JsonObject | undefined;
  if (responses?.[status] === undefined) return `${status} is not described`;
  const media = status === 200 ? 'application~1json' : 'application~1problem+json';
  const at = `#/paths/${path.replaceAll('/', '~1')}/${method}/responses/${status}/content`;
  const check = ajv.compile({ $ref: `https://api.test/${encodeURI(`${at}/${media}/schema`)}` });
  return check(answer) ? null : ajv.errorsText(check.errors);
};

const HOUSE = 'house:kestlemere';
const JOB = 'house=kestlemere&show=vell';

const opening = (show: string) => ({
  ...{ house: 'kestlemere', show, state: null, device: 'a-device', name: 'somebody' },
});
const CODE_FOR = { post: 'rail', answersFor: false };
const JOINING = { code: 'AAAAAA', device: 'a-device', name: 'somebody' };

const ASKED: readonly (readonly [path: string, status: number, request: InjectOptions])[] = [
  ['/api/health', 200, { url: '/api/health' }],
  ['/api/database', 200, { url: '/api/database' }],
  ['/api/documents', 200, { url: '/api/documents' }],
  ['/api/documents-aside', 200, { url: '/api/documents-aside' }],
  ['/api/documents/{id}', 200, { url: `/api/documents/${HOUSE}` }],
  ['/api/documents/{id}', 404, { url: '/api/documents/house:none' }],
  ['/api/documents/{id}/revisions', 200, { url: `/api/documents/${HOUSE}/revisions` }],
  ['/api/documents/{id}/revisions/{revision}', 200, { url: `/api/documents/${HOUSE}/revisions/1` }],
  ['/api/documents/{id}/revisions/{revision}', 400, { url: `/api/documents/${HOUSE}/revisions/a` }],
  ['/api/sheets', 200, { url: `/api/sheets?${JOB}` }],
  ['/api/sheets', 400, { url: '/api/sheets' }],
  ['/api/sheet-code', 200, { url: `/api/sheet-code?${JOB}&sheet=none&code=0` }],
  ['/api/self-check', 200, { url: '/api/self-check' }],
  ['/api/openapi.json', 200, { url: '/api/openapi.json' }],
  ['/api/session', 200, { url: '/api/session' }],
  ['/api/people', 200, { url: '/api/people' }],
  ['/api/people/invitations', 200, { url: '/api/people/invitations' }],
  ['/api/tokens', 200, { url: '/api/tokens' }],
  ['/api/events', 200, { url: '/api/events?after=0' }],
  ['/api/said', 200, { url: '/api/said' }],
  ['/api/call', 200, { url: '/api/call' }],
  ['/api/call', 409, { method: 'DELETE', url: '/api/call', payload: { words: '' } }],
  ['/api/call', 404, { method: 'POST', url: '/api/call', payload: opening('none') }],
  ['/api/call', 200, { method: 'POST', url: '/api/call', payload: opening('vell') }],
  ['/api/call/codes', 200, { method: 'POST', url: '/api/call/codes', payload: CODE_FOR }],
  ['/api/call/join', 404, { method: 'POST', url: '/api/call/join', payload: JOINING }],
  ['/api/call', 200, { url: '/api/call' }],
  ['/api/call', 200, { method: 'DELETE', url: '/api/call', payload: { words: '' } }],
  ['/api/commands/{commandId}', 404, { url: '/api/commands/none-of-this' }],
  [
    '/api/documents/{id}',
    400,
    { method: 'PUT', url: `/api/documents/${HOUSE}`, payload: { kind: 'house' } },
  ],
  [
    '/api/documents/{id}',
    415,
    {
      method: 'PUT',
      url: `/api/documents/${HOUSE}`,
      payload: 'x',
      headers: { 'content-type': 'a/b' },
    },
  ],
  ['/api/commands', 400, { method: 'POST', url: '/api/commands', payload: {} }],
  ['/api/database', 422, { method: 'POST', url: '/api/database', payload: { database: 'house' } }],
];

describe('what is answered', () => {
  it.each(ASKED)('%s with %i is as described', async (path, status, request) => {
    const answer = await ask(request);
    expect(answer.statusCode).toBe(status);
    const method = (request.method ?? 'GET').toLowerCase();
    expect(faultsOf(path, method, status, answer.json())).toBeNull();
  });

  it('is not as described where a field is missing', async () => {
    const { seq: _seq, ...broken } = { ...(await ask({ url: '/api/database' })).json(), seq: 1 };
    expect(faultsOf('/api/database', 'get', 200, broken)).toBeNull();
    const { inHand: _inHand, ...without } = broken;
    expect(faultsOf('/api/database', 'get', 200, without)).toContain('inHand');
  });
});
