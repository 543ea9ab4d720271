/** The demo house with people on the network, each with a device, behind the whole program. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { InjectOptions } from 'fastify';
import type { CallCommandKind, Role, Task } from '#events';
import { openDatabases } from '../databases.ts';
import { demoDocuments } from '../demo.ts';
import { type Listening, loopbackListening } from '../lan/index.ts';
import { LITTLE, PASSPHRASE, taken } from '../stage-for-tests.ts';
import { buildApp } from './app.ts';
import { CALL_SAMPLES, sampleTarget } from './call-samples.ts';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};
const LAN = '192.168.1.20';

export type Headers = Readonly<Record<string, string>>;
/** Who asks, by what they hold; null is whoever sits at the machine itself. */
export type Asker = Headers | null;

/** What every call of these tests is opened on. */
export const VELL = { house: 'kestlemere', show: 'vell', state: 'kestlemere' } as const;

/** The same where nothing was recorded: quick to open, since no set can be judged. */
export const NOTHING_KNOWN = { ...VELL, state: null } as const;

const cookiesOf = (answer: { readonly headers: Record<string, unknown> }): string =>
  [answer.headers['set-cookie'] ?? []]
    .flat()
    .map((each) => String(each).split(';')[0])
    .join('; ');

/** The program on a folder of its own, which is shut and opened again as a restart does. */
const openHouse = async (changes: Partial<Listening>) => {
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-call-'));
  const clock = { nowMs: Date.parse('2026-11-28T10:00:00Z') };
  const now = (): Date => new Date(clock.nowMs);
  const listening = { ...loopbackListening(), ...changes };
  const open = async () => {
    const databases = openDatabases(folder, demoDocuments(examples), now, { cost: LITTLE });
    const webRoot = join(folder, 'none');
    return { databases, app: await buildApp({ databases, webRoot, now, selfCheck, listening }) };
  };
  let house = await open();
  const shut = async (): Promise<void> => {
    await house.app.close();
    house.databases.close();
  };
  return {
    clock,
    databases: () => house.databases,
    app: () => house.app,
    restart: async (): Promise<void> => {
      await shut();
      house = await open();
    },
    close: async (): Promise<void> => {
      await shut();
      rmSync(folder, { recursive: true });
    },
  };
};

type House = Awaited<ReturnType<typeof openHouse>>;

const askingOf = ({ app }: House) => {
  const ask = async (who: Asker, options: InjectOptions) => {
    const headers = { host: '127.0.0.1:4747', ...who };
    const from = who === null ? {} : { remoteAddress: LAN };
    const answer = await app().inject({ ...from, ...options, headers });
    return { status: answer.statusCode, body: answer.json(), headers: answer.headers };
  };
  const post = (who: Asker, url: string, payload: object) =>
    ask(who, { method: 'POST', url, payload });
  const signIn = async (name: string, cookie = ''): Promise<Headers> => {
    const asked = { name, passphrase: PASSPHRASE };
    const answer = await post(cookie === '' ? {} : { cookie }, '/api/session', asked);
    return { cookie: cookiesOf(answer) };
  };
  return { ask, post, signIn };
};

type Asking = ReturnType<typeof askingOf>;

/** People of the house, signed off for their tasks, each signed in on a device of their own. */
const peopleOf = ({ databases }: House, { signIn }: Asking) => {
  const signedOff = (person: string, tasks: readonly Task[]): void => {
    for (const task of tasks) {
      const given = { person, task, lastDay: null };
      taken(databases().auth().giveCompetence({ kind: 'thisMachine' }, given));
    }
  };
  const passphrase = PASSPHRASE;
  return {
    person: async (name: string, role: Role, tasks: readonly Task[]): Promise<Headers> => {
      const auth = databases().auth();
      const { token } = taken(auth.invite({ kind: 'thisMachine' }, { name, role }));
      signedOff(taken(await auth.join({ token, name, passphrase })).id, tasks);
      return signIn(name);
    },
    owner: async (tasks: readonly Task[]): Promise<Headers> => {
      const auth = databases().auth();
      const made = { code: auth.ownerCode() ?? '', name: 'Ada Frost', passphrase };
      signedOff(taken(await auth.makeOwner(made, '127.0.0.1')).id, tasks);
      return signIn('Ada Frost');
    },
  };
};

const callOf = ({ databases, clock }: House, { post }: Asking) => {
  let commands = 0;
  return {
    /** A command of a call as a device sends it; what is not said is that of the samples. */
    give: async (who: Asker, kind: CallCommandKind, { device, call, ...changes }: Giving) => {
      commands += 1;
      const target = changes.target ?? sampleTarget(kind);
      return post(who, '/api/commands', {
        ...{ commandId: `command-${commands}`, device, kind, target, clientMs: clock.nowMs },
        seen: databases().log().lastOn(target),
        payload: { ...CALL_SAMPLES[kind], ...changes.payload, call },
      });
    },
    /** Opened by who leads it; the id of the call. */
    opened: async (who: Asker, device: string, on: object = VELL): Promise<string> => {
      const answer = await post(who, '/api/call', { ...on, device, name: 'Head' });
      if (answer.status !== 200) throw new Error(JSON.stringify(answer.body));
      return answer.body.call.id;
    },
    /** Joins by a code that somebody gave for the post. */
    joined: async (who: Asker, at: string, { by, device, answersFor = false }: Joining) => {
      const { code } = (await post(by, '/api/call/codes', { post: at, answersFor })).body;
      return post(who, '/api/call/join', { code, device, name: `at ${at}` });
    },
  };
};

export const openCallStage = async (changes: Partial<Listening> = {}) => {
  const house = await openHouse(changes);
  const asking = askingOf(house);
  return {
    ...{ databases: house.databases, restart: house.restart, close: house.close },
    ...asking,
    ...peopleOf(house, asking),
    ...callOf(house, asking),
    pass: (milliseconds: number): void => {
      house.clock.nowMs += milliseconds;
    },
  };
};

type Giving = {
  readonly device: string;
  readonly call: string;
  readonly target?: string;
  readonly payload?: object;
};
type Joining = { readonly by: Asker; readonly device: string; readonly answersFor?: boolean };

export type CallStage = Awaited<ReturnType<typeof openCallStage>>;

export const codesIn = (answer: { readonly body: unknown }): readonly string[] => {
  const { refusals = [], answer: command } = answer.body as {
    readonly refusals?: readonly { readonly code: string }[];
    readonly answer?: { readonly code?: string };
  };
  return [
    ...refusals.map(({ code }) => code),
    ...(command?.code === undefined ? [] : [command.code]),
  ];
};
