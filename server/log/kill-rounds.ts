/** `kill -9` under load, again and again on one database: nothing acknowledged is lost. */
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { openHouseRecord } from './house-record.ts';
import { verifyRecord } from './verify-record.ts';

export type Killed = {
  /** Commands and saves acknowledged in all rounds. */
  readonly acknowledged: number;
  /** Commands in the record that nobody was told of: at most the one in hand at each kill. */
  readonly unacknowledged: number;
  readonly faults: readonly string[];
};

/** Numbers from a seed (Marsaglia's xorshift), so that a bad run can be run again. */
const randomFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
};

const MOST_MS = 120;

export const killAgainAndAgain = async (
  file: string,
  {
    rounds,
    seed,
    told = () => undefined,
  }: {
    readonly rounds: number;
    readonly seed: number;
    readonly told?: (round: number, killed: Killed) => void;
  },
): Promise<Killed> => {
  const random = randomFrom(seed);
  const commands = new Map<string, string>();
  const faults: string[] = [];
  let [acknowledged, unacknowledged, revision, first] = [0, 0, 0, 1];
  for (let round = 1; round <= rounds; round += 1) {
    const lines = await killedRound(file, first, Math.floor(random() * MOST_MS));
    for (const line of lines) {
      const [what = '', ...rest] = line.split(' ');
      if (what === 'saved') revision = Number(rest[0]);
      else commands.set(what, rest.join(' '));
    }
    acknowledged += lines.length;
    const found = afterKill(file, commands, revision);
    faults.push(...found.faults.map((fault) => `round ${round}: ${fault}`));
    unacknowledged = found.unacknowledged;
    first = found.next;
    told(round, { acknowledged, unacknowledged, faults });
  }
  return { acknowledged, unacknowledged, faults };
};

/** Lines acknowledged before the kill; one that was cut off was not. */
const killedRound = (file: string, first: number, afterMs: number): Promise<readonly string[]> =>
  new Promise((resolve, reject) => {
    const child = spawn(
      process.execPath,
      [join(import.meta.dirname, 'kill-child.ts'), file, String(first)],
      { stdio: ['ignore', 'pipe', 'pipe'] },
    );
    let [output, errors, isArmed] = ['', '', false];
    child.stdout.on('data', (chunk: Buffer) => {
      output += chunk.toString('utf8');
      if (isArmed || !output.includes('open\n')) return;
      isArmed = true;
      setTimeout(() => child.kill('SIGKILL'), afterMs);
    });
    child.stderr.on('data', (chunk: Buffer) => {
      errors += chunk.toString('utf8');
    });
    child.on('error', reject);
    child.on('close', (_code, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(`the child ended by itself: ${errors}`));
      else
        resolve(
          output
            .split('\n')
            .slice(0, -1)
            .filter((line) => line !== 'open'),
        );
    });
  });

const afterKill = (file: string, commands: ReadonlyMap<string, string>, revision: number) => {
  const record = openHouseRecord(file, { nowMs: Date.now, newId: randomUUID });
  const faults = [...verifyRecord(record).faults];
  if (!record.identity().isRecord) faults.push(`no record any more: ${record.identity().why}`);
  for (const [n, said] of commands) {
    const answer = record.log.answerTo(`command-${n}`)?.answer;
    const seq = answer?.outcome === 'accepted' ? (answer.seqs[0] ?? 0) : 0;
    const [event] = record.log.after(seq - 1, 1);
    if (seq === 0 || `${event?.seq} ${event?.hash}` !== said) faults.push(`command ${n} is lost`);
  }
  const kept = record.store.current('show:a')?.revision ?? 0;
  if (kept < revision) faults.push(`revision ${revision} is lost`);
  if (record.log.on('document:show:a', 0, kept + 10).length !== kept) {
    faults.push(`${kept} revisions have not ${kept} events`);
  }
  const { count, last } = record.database
    .prepare(
      `SELECT COUNT(*) AS count, COALESCE(MAX(CAST(SUBSTR(command_id, 9) AS INTEGER)), 0) AS last
       FROM answer`,
    )
    .get() as { readonly count: number; readonly last: number };
  record.close();
  return { faults, unacknowledged: count - commands.size, next: last + 1 };
};
