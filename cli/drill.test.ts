/**
 * `plan --drill` on set 27 of the demo, with the header of scenario S10 of its plan on it: marked
 * 250 lb, give or take 62 (its own computed figures, so no check from outside).
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { heard as command } from './heard.ts';

const examples = join(import.meta.dirname, '..', 'examples', 'kestlemere');
const HOUSE = join(examples, 'house.json');
const STATE = join(examples, 'state.json');
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-drill-'));
afterAll(() => rmSync(folder, { recursive: true }));

type Hang = {
  readonly set: string;
  readonly items: readonly object[];
  readonly coupledWith?: readonly string[];
};

const showWith = (name: string, header: object): string => {
  const show = JSON.parse(readFileSync(join(examples, 'clockmaker.show.json'), 'utf8'));
  const hangs = (show.hangs as readonly Hang[]).map((hang) => {
    const { coupledWith, ...alone } = hang;
    if (hang.set === '27') return { ...alone, items: [{ ...hang.items[0], ...header }] };
    return coupledWith?.includes('27') === true ? alone : hang;
  });
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify({ ...show, hangs }));
  return file;
};

const marked = (tolerance: string) => ({
  drop: '1 ft',
  pick: '0.5 ft',
  takeoff: {
    by: 'mass',
    given: { basis: 'estimated', source: 'its label' },
    mass: { value: '250 lb', tolerance },
  },
});

const SHOW = showWith('marked.show.json', marked('62 lb'));
const plan = (show: string, ...more: readonly string[]) =>
  command('plan', HOUSE, show, '--set', '27', '--state', STATE, '--from', 'bare', ...more);

describe('plan --drill', () => {
  it('[S10] says the base load, the pull, both answers of each, and what it weighs', async () => {
    const { code, out } = await plan(SHOW, '--drill');
    expect(code).toBe(0);
    expect(out).toMatch(/^DEMO/);
    expect(out).toContain('8 bricks, then up to 14. It ends at the first pull');
    expect(out).toMatch(/rises slowly to 55.lbf at most, on a gauge/);
    expect(out).toMatch(/If it stays: it weighs 239.lb to 312.lb\. .*go on with step 12/);
    expect(out).toMatch(/If it lifts: it weighs 213.lb to 295.lb\. STOP HERE/);
    // 47 lbf out and 11 to check it in: 251 and half of 58 is 280.
    expect(out).toMatch(/lifted with 12 on: 251.lb and half of \(out less in\)/);
    expect(out).toContain('No rule of the order of work is broken by 19 steps');
    expect(out).not.toMatch(/[-−]\d+.lb/);
    expect(out).not.toMatch(/\bsafe\b/i);
  });

  it('says what is known after each brick, and not what the list says', async () => {
    const { out } = await plan(SHOW, '--drill');
    // With 12 on the list has it 2 lb arbor heavy; the pulls before have shown that it is not.
    expect(out).not.toContain('arbor heavy');
    expect(out).toMatch(/12 on for the drill\. Batten heavy even at its lightest/);
  });

  it('answers as JSON, with the verdict of the judge', async () => {
    const { code, out } = await plan(SHOW, '--drill', '--json');
    expect(code).toBe(0);
    const { set, drill, verdict } = JSON.parse(out);
    expect([set, drill.baseBricks, drill.mostBricks]).toEqual(['27', 8, 14]);
    expect([verdict.broken, verdict.refused]).toEqual([null, null]);
    expect(verdict.states).toHaveLength(drill.steps.length + 1);
    expect(drill.eases).toHaveLength(7);
  });

  it('drills what the lock would hold too, since it is asked for', async () => {
    const { code, out } = await plan(showWith('weighed.show.json', marked('5 lb')), '--drill');
    expect(code).toBe(0);
    expect(out).toMatch(/in doubt by \d+.lbf; the lock holds 50.lbf/);
  });

  it('says why there is none, and ends with 1', async () => {
    const low = showWith('low.show.json', { ...marked('62 lb'), drop: '4 ft', pick: '1 ft' });
    const { code, out } = await plan(low, '--drill');
    expect(code).toBe(1);
    expect(out).toMatch(/No drill: .*(touches the deck|hangs on the low stop)/);
    expect(out).not.toContain('Ring off');
  });

  it('begins where the record has the set, and not off its stop', async () => {
    const asked = ['plan', HOUSE, SHOW, '--set', '27', '--state', STATE, '--drill'];
    const { code, out } = await command(...asked);
    expect(code).toBe(1);
    expect(out).toContain('No drill: the set is not on its low stop');
  });

  it('is not mixed with what asks for another order', async () => {
    const { code, out, err } = await plan(SHOW, '--drill', '--to', 'strike');
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/'--drill' cannot be used with option '--to/);
    expect((await plan(SHOW, '--drill', '--no-doubt')).code).toBe(2);
    expect((await plan(SHOW, '--drill', '--lock', 'nominal')).code).toBe(2);
  });

  it('ends with 2 where there is no record', async () => {
    const { code, err } = await command('plan', HOUSE, SHOW, '--set', '27', '--drill');
    expect(code).toBe(2);
    expect(err).toContain('WRK-001');
  });
});

describe('plan of a load that nobody knows', () => {
  it('names the drill right where it says that masses are taken as they are written', async () => {
    const { out } = await plan(SHOW);
    expect(out).toMatch(/WEIGH OR PULL-TEST FIRST[\s\S]*--drill\.\n\n 0 {2}As it stands/);
    const known = await plan(showWith('known.show.json', marked('5 lb')));
    expect(known.out).not.toContain('--drill');
  });
});
