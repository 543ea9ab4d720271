/** A house in a folder of its own, with a clock moved by hand and passphrases that cost little. */
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { HouseEvent, Role } from '#events';
import { assert, type Result } from '#outcome';
import type { AccessRefusal, Auth, Coming, Cost, Person, SignedIn } from './auth/index.ts';
import { openHouseRecord } from './log/index.ts';
import { openPeople } from './people.ts';

/** Far below what is used in earnest: these tests are about who, and not about how slow. */
export const LITTLE: Cost = { n: 16, r: 1, p: 1 };

export const PASSPHRASE = 'seven lanterns over the weir';

export type Stage = {
  readonly auth: () => Auth;
  /** Moves the clock on. */
  readonly pass: (milliseconds: number) => void;
  /** Closes the file and opens it again, as a restart does. */
  readonly restart: () => void;
  readonly events: () => readonly HouseEvent[];
  readonly owner: () => Promise<Person>;
  readonly joined: (name: string, role: Role) => Promise<Person>;
  readonly close: () => void;
};

export const coming = (changes: Partial<Coming> = {}): Coming => ({
  address: '10.0.0.7',
  deviceToken: null,
  oldSession: null,
  label: 'a tablet',
  ...changes,
});

export const taken = <T>(result: Result<T, AccessRefusal>): T => {
  assert(result.ok, `taken, not ${JSON.stringify(result)}`);
  return result.value;
};

export const openStage = (): Stage => {
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-people-'));
  let nowMs = Date.parse('2026-11-28T10:00:00Z');
  const open = () => {
    const record = openHouseRecord(join(folder, 'a.sqlite'), {
      nowMs: () => nowMs,
      newId: randomUUID,
    });
    return { record, auth: openPeople(record, () => new Date(nowMs), { cost: LITTLE }) };
  };
  let house = open();
  const personWith = ({ session }: SignedIn): Person => {
    const who = house.auth.whoIs({ bearer: null, session, isThisMachine: false });
    assert(who.kind === 'person', 'who has just signed in is a person');
    return who;
  };
  const signedIn = async (name: string): Promise<Person> =>
    personWith(taken(await house.auth.signIn({ name, passphrase: PASSPHRASE }, coming())));
  return {
    auth: () => house.auth,
    pass: (milliseconds) => {
      nowMs += milliseconds;
    },
    restart: () => {
      house.record.close();
      house = open();
    },
    events: () => house.record.log.after(0, 1000),
    owner: async () => {
      const code = house.auth.ownerCode() ?? '';
      const owner = { code, name: 'Ada Frost', passphrase: PASSPHRASE };
      taken(await house.auth.makeOwner(owner, '127.0.0.1'));
      return signedIn('Ada Frost');
    },
    joined: async (name, role) => {
      const { token } = taken(house.auth.invite({ kind: 'thisMachine' }, { name, role }));
      taken(await house.auth.join({ token, name, passphrase: PASSPHRASE }));
      return signedIn(name);
    },
    close: () => {
      house.record.close();
      rmSync(folder, { recursive: true });
    },
  };
};
