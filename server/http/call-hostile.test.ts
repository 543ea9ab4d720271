/**
 * Commands of a call as nobody in good faith sends them, from a seed, from a person at a post: each
 * is refused or recorded, none is a fault, and the record is sound and folds the same afterwards.
 * Set COUNTERPOISE_SEED to see those of another run again.
 */
import { expect, it } from 'vitest';
import type { CallCommandKind } from '#events';
import { verifyChain } from '#events';
import { roomOf } from './call-parts.ts';
import { CALL_SAMPLES, sampleTarget } from './call-samples.ts';
import { openCallStage } from './call-stage.ts';
import { chanceFrom } from './hostile-requests.ts';

const SEED = Number(process.env['COUNTERPOISE_SEED'] ?? Math.floor(Math.random() * 2 ** 32));
const COUNT = 1500;

const KINDS = Object.keys(CALL_SAMPLES) as readonly CallCommandKind[];
const POSTS = [
  'rail',
  'headFly',
  'deck',
  'gallery:upper',
  'gallery:',
  'marshal:run',
  '',
  '__proto__',
];
const TARGETS = [
  'house',
  'set:kestlemere/4',
  'set:kestlemere/11',
  'set:kestlemere/',
  'set:__proto__',
];
const ODD: readonly unknown[] = [
  ...[null, true, 0, -1, 1.5, 1e308, 5e-324, 2 ** 53, '', 'x'.repeat(500), '\ud800', '__proto__'],
  ...[[], {}, [null], { act: 'fly', to: 1e7 }, { act: 'fly', to: -1e7 }, { zone: 'run' }],
  { act: 'add', kind: 'F', count: 2 ** 53 - 1, gallery: 'upper' },
  { act: 'remove', kind: '__proto__', count: 1, gallery: 'constructor' },
];

type Chance = () => number;
const pick = <T>(chance: Chance, from: readonly T[]): T =>
  from[Math.floor(chance() * from.length)] as T;

/** A sample with some of what is in it turned to something odd, however deep it lies. */
const turned = (chance: Chance, value: unknown): unknown => {
  if (chance() < 0.08) return pick(chance, ODD);
  if (Array.isArray(value)) return value.map((each) => turned(chance, each));
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).map(([name, each]) => [name, turned(chance, each)]);
  return Object.fromEntries(chance() < 0.03 ? fields.slice(1) : fields);
};

it(`hostile commands of a call fold to one state and no fault, seed ${SEED}`, async () => {
  const stage = await openCallStage();
  const lead = await stage.owner(['headFly']);
  const call = await stage.opened(lead, 'head');
  const rail = await stage.person('Rail', 'run', ['lead']);
  await stage.joined(rail, 'rail', { by: lead, device: 'rail-1' });
  const chance = chanceFrom(SEED);
  const log = () => stage.databases().log();
  const room = roomOf(stage.databases());
  const statuses: Record<number, number> = {};
  for (let count = 0; count < COUNT; count += 1) {
    const kind = pick(chance, KINDS);
    const target = chance() < 0.7 ? sampleTarget(kind) : pick(chance, TARGETS);
    const post = chance() < 0.4 ? { post: pick(chance, POSTS) } : {};
    const answer = await stage.post(chance() < 0.5 ? rail : lead, '/api/commands', {
      ...{ commandId: `hostile-${count}`, kind, target, clientMs: 0 },
      device: pick(chance, ['rail-1', 'head', 'other']),
      seen: chance() < 0.8 ? log().lastOn(target) : pick(chance, [null, 0, -1, 2 ** 40]),
      payload: turned(chance, {
        ...{ ...CALL_SAMPLES[kind], ...post },
        call: chance() < 0.95 ? call : 'another',
      }),
    });
    statuses[answer.status] = (statuses[answer.status] ?? 0) + 1;
    expect(answer.status, `${count}: ${kind}: ${JSON.stringify(answer.body)}`).toBeLessThan(500);
  }
  // It came as far as the form, the rights, the rules and the record.
  for (const status of [200, 400, 403, 409]) expect(statuses[status]).toBeGreaterThan(20);
  expect(verifyChain(log().after(0, 1_000_000)).ok).toBe(true);
  expect(room.now()).toEqual(roomOf(stage.databases()).now());
  const closed = { method: 'DELETE', url: '/api/call', payload: { words: '' } } as const;
  expect((await stage.ask(lead, closed)).status).toBe(200);
  expect(({} as Record<string, unknown>)['standing']).toBeUndefined();
  await stage.close();
}, 60_000);
