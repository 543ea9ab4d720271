/** Opens the ports, and keeps the certificate in step with dates and addresses while it runs. */
import type { Server } from 'node:http';
import type { Server as SecureServer } from 'node:tls';
import type { FastifyInstance } from 'fastify';
import type { Log } from './http/index.ts';
import { type Listening, trustServer } from './lan/index.ts';

type Serving = {
  readonly app: FastifyInstance;
  readonly listening: Listening;
  readonly port: number;
  readonly trustPort: number;
  readonly log: Log;
};

/** An address given by the network is noticed within so long. */
const LOOK_MS = 60_000;

export class PortTaken extends Error {
  readonly port: number;
  constructor(port: number) {
    super(`Port ${port} is taken.`);
    this.port = port;
  }
}

const orTaken = async (port: number, opened: Promise<unknown>): Promise<void> => {
  try {
    await opened;
  } catch (fault) {
    if ((fault as { code?: string }).code === 'EADDRINUSE') throw new PortTaken(port);
    throw fault;
  }
};

const opened = (server: Server, port: number, host: string) =>
  new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });

const closed = (server: Server): Promise<void> => {
  server.closeAllConnections();
  return new Promise((resolve) => server.close(() => resolve()));
};

/** What stops it again. Where a port is taken, nothing of it is left open. */
export const startServing = async (serving: Serving): Promise<() => Promise<void>> => {
  const { app, listening, port, trustPort, log } = serving;
  const trust = listening.trustUrls().length === 0 ? null : trustServer(listening);
  try {
    await orTaken(port, app.listen({ host: listening.bind, port }));
    if (trust !== null) await orTaken(trustPort, opened(trust, trustPort, listening.bind));
  } catch (fault) {
    await app.close();
    throw fault;
  }
  const timer = setInterval(() => look(serving), LOOK_MS);
  log.write('info', 'started', { mode: listening.mode, addresses: listening.urls() });
  return async () => {
    clearInterval(timer);
    if (trust !== null) await closed(trust);
    await app.close();
  };
};

/** New connections are shown the new certificate; those that are open go on. */
export const look = ({ app, listening, log }: Pick<Serving, 'app' | 'listening' | 'log'>): void => {
  const refreshed = listening.refresh();
  if (!refreshed.ok) {
    const [first] = refreshed.error;
    log.write('warn', 'certificate not renewed', {
      code: first?.code ?? null,
      found: first?.found ?? null,
    });
    return;
  }
  const pair = listening.server();
  if (!refreshed.value || pair === null) return;
  const server = app.server as unknown as SecureServer;
  server.setSecureContext({ key: pair.keyPem, cert: pair.certificatePem, minVersion: 'TLSv1.2' });
  log.write('info', 'certificate renewed', { until: listening.certificate()?.until ?? null });
};
