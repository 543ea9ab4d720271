/** `plan --with`: two coupled sets and one order for both, on the demo's canted header. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { heard } from './heard.ts';

const DEMO = join(import.meta.dirname, '..', 'examples', 'kestlemere');
const HEADER = [
  'plan',
  `${DEMO}/house.json`,
  `${DEMO}/clockmaker.show.json`,
  '--state',
  `${DEMO}/state.json`,
  '--set',
  '23',
] as const;
const PAIR = [...HEADER, '--with', '27', '--from', 'bare'] as const;

describe('an order for two coupled sets', () => {
  it('moves both on one word, never one alone, and says what one stopping would do', async () => {
    const { code, out } = await heard(...[...PAIR, '--least', '-1 ft', '--most', '6.5 ft']);
    expect(code).toBe(0);
    expect(out).toContain('Set 23, Canted header, front edge and Set 27');
    expect(out).toMatch(/MASSES ARE TAKEN AS THEY ARE WRITTEN/);
    expect(out.match(/BOTH TOGETHER/g)?.length).toBeGreaterThan(0);
    expect(out).not.toContain('One set by itself');
    expect(out).toMatch(/If one stops at step \d+ and the other goes on: set 23 with all/);
    expect(out).not.toContain('NOT TO BE USED');
  }, 60_000);

  it('says why there is none where the header must stay canted on the deck', async () => {
    const { code, out } = await heard(...[...PAIR, '--least', '4.5 ft', '--most', '6.5 ft']);
    expect(code).toBe(1);
    expect(out).toContain('NOT TO BE USED');
    expect(out).toMatch(/that none exists is not claimed/);
  }, 60_000);

  it('[CLI-010] asks for the band, which nobody has written down', async () => {
    const { code, err } = await heard(...[...PAIR, '--least', '-1 ft']);
    expect(code).toBe(2);
    expect(err).toMatch(/--most: found nothing; accepted: a height.*CLI-010/);
    const other = await heard(...[...PAIR, '--least', '1', '--most', '2 ft']);
    expect(other.err).toMatch(/--least: found 1.*CLI-010/);
    const change = [...PAIR, '--least', '0 ft', '--most', '6 ft', '--to', 'state.json'];
    expect((await heard(...change)).err).toMatch(/--to: found state.json.*CLI-010/);
  });

  it('[WRK-004] opens a coupled set only with its partner', async () => {
    const alone = await heard(...[...HEADER, '--from', 'bare']);
    expect(alone.code).toBe(2);
    expect(alone.err).toMatch(/WRK-004/);
    const wrong = await heard(
      ...[...HEADER, ...['--with', '9', '--from', 'bare', '--least', '0 ft', '--most', '6 ft']],
    );
    expect(wrong.code).toBe(2);
    expect(wrong.err).toMatch(/coupled with 27.*WRK-004/);
  });
});
