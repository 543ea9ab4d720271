import { randomBytes, X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { request as plainRequest } from 'node:http';
import { connect as connectHttp2 } from 'node:http2';
import { request as secureRequest } from 'node:https';
import { type AddressInfo, createServer } from 'node:net';
import type { NetworkInterfaceInfo } from 'node:os';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect as connectTls } from 'node:tls';
import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Databases, openDatabases } from './databases.ts';
import { buildApp, logTo } from './http/index.ts';
import { type Listening, openListening } from './lan/index.ts';
import { look, PortTaken, startServing } from './serving.ts';

const now = (): Date => new Date();
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};
const cards: Record<string, NetworkInterfaceInfo[]> = { eth0: [] };
const machine = { hostname: () => 'flies', interfaces: () => cards };

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });

let folder = '';
let databases: Databases;
let app: FastifyInstance;
let listening: Listening;
let stop: () => Promise<void>;
let [port, trustPort] = [0, 0];
const lines: string[] = [];
const log = logTo({ level: 'info', now, line: (text) => void lines.push(text) });
let ca = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-serving-'));
  databases = openDatabases(folder, [], now);
  [port, trustPort] = [await freePort(), await freePort()];
  const opened = openListening({
    settings: { listen: 'https', names: ['flies.home.arpa'] },
    dataFolder: folder,
    port,
    trustPort,
    machine,
    making: { now, randomBytes },
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  listening = opened.value;
  ca = listening.authorityPem() ?? '';
  const parts = {
    databases,
    webRoot: join(folder, 'none'),
    now,
    selfCheck,
    listening,
    log,
  };
  app = await buildApp(parts);
  stop = await startServing({ app, listening, port, trustPort, log });
});
afterAll(async () => {
  await stop();
  databases.close();
  rmSync(folder, { recursive: true });
});

type Got = { readonly status: number; readonly body: string; readonly type: string };

const got = (
  ask: typeof secureRequest | typeof plainRequest,
  options: Record<string, unknown>,
): Promise<Got> =>
  new Promise((resolve, reject) => {
    const request = ask({ host: '127.0.0.1', agent: false, ...options }, (answer) => {
      let body = '';
      answer.on('data', (chunk) => {
        body += String(chunk);
      });
      const type = answer.headers['content-type'] ?? '';
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, body, type }));
    });
    request.on('error', reject).end();
  });

const secure = (path: string, more: Record<string, unknown> = {}): Promise<Got> =>
  got(secureRequest, { port, path, ca, headers: { host: `127.0.0.1:${port}` }, ...more });
const plain = (path: string, headers: Record<string, string> = {}): Promise<Got> =>
  got(plainRequest, { port: trustPort, path, headers: { host: '127.0.0.1', ...headers } });

describe('over HTTPS with its own authority', () => {
  it('answers who trusts the authority, by address and by name', async () => {
    const health = JSON.parse((await secure('/api/health')).body);
    expect(health).toMatchObject({ mode: 'ownAuthority', signOffs: true, build: 'abcdefabcdef' });
    const named = { servername: 'flies.home.arpa', headers: { host: 'flies.home.arpa' } };
    expect((await secure('/api/health', named)).status).toBe(200);
  });

  it('is refused by who does not trust the authority, or asked for another name', async () => {
    await expect(secure('/api/health', { ca: undefined })).rejects.toThrow(/certificate/);
    await expect(secure('/api/health', { servername: 'bank.example' })).rejects.toThrow(/altnames/);
  });

  it('refuses a name that is not its own, and pages of others', async () => {
    const status = async (headers: Record<string, string>) =>
      (await secure('/api/health', { headers, servername: 'localhost' })).status;
    expect(await status({ host: 'other.example' })).toBe(403);
    const host = `127.0.0.1:${port}`;
    expect(await status({ host, origin: `http://${host}` })).toBe(403);
    expect(await status({ host, origin: 'https://other.example' })).toBe(403);
    expect(await status({ host, origin: `https://${host}` })).toBe(200);
  });

  it('speaks HTTP/2, with the same checks', async () => {
    const session = connectHttp2(`https://127.0.0.1:${port}`, { ca });
    const asked = (headers: Record<string, string>) =>
      new Promise<number>((resolve, reject) => {
        const stream = session.request({ ':path': '/api/health', ...headers });
        stream.on('response', (answer) => resolve(Number(answer[':status'])));
        stream.on('error', reject);
        stream.resume();
      });
    expect(session.alpnProtocol ?? 'h2').toBe('h2');
    expect(await asked({})).toBe(200);
    expect(await asked({ ':authority': 'other.example' })).toBe(403);
    expect(await asked({ origin: 'https://other.example' })).toBe(403);
    await new Promise<void>((resolve) => session.close(resolve));
  });

  it('does not speak what is older than TLS 1.2', async () => {
    const spoken = connectTls({ port, host: '127.0.0.1', ca, maxVersion: 'TLSv1.1' as never });
    await expect(
      new Promise((resolve, reject) => {
        spoken.once('secureConnect', resolve).once('error', reject);
      }),
    ).rejects.toThrow();
  });

  it('shows another certificate once it is renewed, without a restart', async () => {
    const shown = () =>
      new Promise<string>((resolve, reject) => {
        const socket = connectTls({ port, host: '127.0.0.1', ca }, () => {
          resolve(socket.getPeerCertificate().serialNumber);
          socket.end();
        }).once('error', reject);
      });
    const first = await shown();
    look({ app, listening, log });
    expect(await shown()).toBe(first);
    // The clock of the server alone goes on; what it makes is still valid to this test.
    cards['eth0'] = [
      {
        address: '192.168.7.20',
        family: 'IPv4',
        internal: false,
        netmask: '255.255.255.0',
        mac: '00:00:00:00:00:00',
        cidr: null,
      },
    ];
    look({ app, listening, log });
    const renewed = await shown();
    expect(renewed).not.toBe(first);
    expect(renewed).toBe(
      new X509Certificate(listening.server()?.certificatePem ?? '').serialNumber,
    );
    expect(lines.join('')).toContain('"event":"certificate renewed"');
  });
});

describe('the page on trust', () => {
  it('stands on a port of its own over plain HTTP, and nothing else does', async () => {
    const page = await plain('/trust');
    expect(page.type).toContain('text/html');
    const fingerprint = new X509Certificate(ca).fingerprint256.replaceAll(':', '');
    expect(page.body).toContain(fingerprint.slice(0, 4));
    expect(page.body).toContain(`https://flies.home.arpa:${port}`);
    expect(page.body).toContain('<svg class="qr"');
    for (const path of ['/api/health', '/api/documents', '/index.html', '/trust/../lan', '//']) {
      expect((await plain(path)).status, path).toBe(404);
    }
    expect((await plain('/trust', { host: 'other.example' })).status).toBe(403);
  });

  it('gives the certificate, and never a key', async () => {
    const { body, type } = await plain('/trust/counterpoise-authority.crt');
    expect(type).toBe('application/x-x509-ca-cert');
    expect(new X509Certificate(body).fingerprint256).toBe(new X509Certificate(ca).fingerprint256);
    expect(body).not.toContain('PRIVATE');
  });

  it('says over HTTPS that trust is there, in the language of the device', async () => {
    expect((await secure('/trust')).body).toContain('This page came over HTTPS');
    expect((await secure('/trust')).body).not.toContain('<script');
    const german = await plain('/trust', { 'accept-language': 'de-AT,en;q=0.5' });
    expect(german.body).toContain('<html lang="de">');
  });
});

describe('a port that is taken', () => {
  it('is named, also where it is the second one', async () => {
    const other = await freePort();
    const again = startServing({ app: await freshApp(), listening, port: other, trustPort, log });
    await expect(again).rejects.toThrow(new PortTaken(trustPort));
    const first = startServing({ app: await freshApp(), listening, port, trustPort, log });
    await expect(first).rejects.toThrow(new PortTaken(port));
  });
});

const freshApp = (): Promise<FastifyInstance> => {
  const parts = { databases, webRoot: join(folder, 'none'), now, selfCheck, listening, log };
  return buildApp(parts);
};
