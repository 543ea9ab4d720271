/** docs/reference/openapi.json: the interface for other programs, as a server gives it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeDocument } from '#documents';
import { thisInstallation } from '#installation';
import { buildApp, openDatabases } from '#server';
import type { Paper } from './paper.ts';

const HOST = '127.0.0.1';

/** Asked of a server with nothing in it: what it describes does not depend on what it holds. */
const make = async (): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-openapi-'));
  const now = (): Date => new Date();
  const databases = openDatabases(folder, [], now);
  const selfCheck = {
    record: () => ({ installation: thisInstallation(), state: { is: 'notRun' as const } }),
  };
  const app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
  try {
    const answer = await app.inject({ url: '/api/openapi.json', headers: { host: HOST } });
    return writeDocument(answer.json());
  } finally {
    await app.close();
    databases.close();
    rmSync(folder, { recursive: true });
  }
};

export const openApi: Paper = { path: 'docs/reference/openapi.json', make };
