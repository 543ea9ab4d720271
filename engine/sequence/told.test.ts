/**
 * Stages written by hand, told: with the batten in the lamp and 8 F are 48.59 lb batten heavy,
 * 1.32 lb less for every foot, on a lock of 50 lb, 25 of which are trusted with the run open. With
 * hands on it the lamp may be dropped, and 8 F alone are 151 lb arbor heavy.
 */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint, Standing, WorkZone } from '#state';
import { ft } from './example-jobs.contract.ts';
import { flyTo, type Leg, plates, tellLegs, tellWords } from './example-stages.contract.ts';

const attach: Leg = {
  step: { act: 'attach', item: 'lamp', as: 'flying' },
  load: { phases: [3] },
};
const release: Leg = { step: { act: 'release', item: 'lamp' }, load: { phases: [0] } };
const RUN: WorkZone = { zone: 'run' };
const MID: WorkZone = { zone: 'drop', gallery: 'mid' };

const at = (heightFt: number, more: Partial<Standing> = {}): Partial<Standing> => ({
  height: metres(ft(heightFt)),
  ...more,
});

const restraint = (more: Partial<Restraint>): Restraint => ({
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(2000),
  from: metres(ft(3)),
  to: metres(ft(40)),
  owner: null,
  tag: null,
  ...more,
});

describe('zones', () => {
  it('have the run closed for a flight, and open again where a fault would be held', () => {
    // 20.87 lb at 24 ft, −0.25 at 40, −26.65 at 60.
    expect(tellWords({ start: at(24) }, [flyTo(40)])).toEqual([
      'close run',
      'fly 40.00',
      'reopen run',
    ]);
    expect(tellWords({ start: at(24) }, [flyTo(60)])).toEqual(['close run', 'fly 60.00']);
    expect(tellWords({ start: at(24) }, [flyTo(40), flyTo(24)])).toEqual([
      'close run',
      'fly 40.00',
      'fly 24.00',
      'reopen run',
    ]);
  });

  it('have it closed for bricks with a lamp above that would not be held if it fell', () => {
    expect(tellWords({ start: at(24) }, [plates('add', 1, 9, 'mid')])).toEqual([
      'close run',
      'close mid',
      'add 1 F mid',
      'reopen mid',
      'reopen run',
    ]);
  });

  it('have it open for riggers', () => {
    expect(tellWords({ start: at(24) }, [flyTo(3), plates('remove', 8, 0), release])).toEqual([
      'close run',
      'fly 3.00',
      'close upper',
      'remove 8 F upper',
      'reopen upper',
      'reopen run',
      'release lamp',
    ]);
  });

  it('leave no gallery at work but one', () => {
    const legs = [plates('add', 1, 9, 'mid'), plates('add', 1, 10), plates('add', 1, 11, 'mid')];
    expect(tellWords({ start: at(24) }, legs)).toEqual([
      'close run',
      'close mid',
      'add 1 F mid',
      'reopen mid',
      'close upper',
      'add 1 F upper',
      'reopen upper',
      'close mid',
      'add 1 F mid',
      'reopen mid',
    ]);
    expect(tellWords({ start: at(24, { closed: [MID] }) }, legs)).toEqual([
      'close run',
      'add 1 F mid',
      'close upper',
      'add 1 F upper',
      'reopen upper',
      'add 1 F mid',
    ]);
  });

  it('stay closed that were found closed', () => {
    const found = at(24, { closed: [RUN] });
    const legs = [flyTo(3), plates('remove', 8, 0), release];
    expect(tellWords({ start: found }, legs)).toEqual([
      'fly 3.00',
      'close upper',
      'remove 8 F upper',
      'reopen upper',
      'release lamp',
    ]);
    const { states } = tellLegs({ start: found }, legs);
    expect(states.map(({ standing }) => standing.closed.length)).toEqual([1, 1, 2, 2, 1, 1]);
    expect(states[2]?.standing.closed).toEqual([RUN, { zone: 'drop', gallery: 'upper' }]);
  });

  it('are none for nothing', () => {
    expect(tellLegs({ start: at(24) }, [])).toMatchObject({ steps: [], restraintSpan: null });
    expect(tellLegs({ start: at(24) }, []).states).toHaveLength(1);
  });
});

describe('a restraint that is asked for', () => {
  const stood = (...[asked, legs]: Parameters<typeof tellLegs>) =>
    tellLegs(asked, legs).states.map(({ standing }) => standing.restraints.length);

  it('is rigged with the run closed before its first need, and off after its last', () => {
    // 13 F leave −76.41 lb at 3 ft.
    const legs = [plates('add', 5, 13), flyTo(20.3), plates('remove', 5, 8, 'mid'), flyTo(30)];
    expect(tellWords({ extra: {} }, legs)).toEqual([
      'close run',
      'rig bullLine',
      'close upper',
      'add 5 F upper',
      'fly 20.30',
      'reopen upper',
      'close mid',
      'remove 5 F mid',
      'unrig bullLine',
      'fly 30.00',
      'reopen mid',
      'reopen run',
    ]);
    expect(stood({ extra: {} }, legs)).toEqual([0, 0, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0]);
    expect(tellLegs({ extra: {} }, legs).restraintSpan).toEqual({ lo: ft(3), hi: ft(20.3) });
  });

  it('lets riggers to a batten that is slung', () => {
    const bare = at(20, { items: { lamp: 'away' }, stack: [] });
    const work = [{ fromM: ft(3), toM: ft(61) }];
    const asked = { start: bare, options: { work }, extra: { as: 'fast' } } as const;
    // 7 F alone are −148.85 lb at 20 ft, and the lamp on them 51.15.
    const legs = [plates('add', 7, 7, 'mid'), attach, plates('add', 1, 8, 'mid')];
    expect(tellWords(asked, legs)).toEqual([
      'close run',
      'rig arborSling',
      'close mid',
      'add 7 F mid',
      'reopen mid',
      'reopen run',
      'attach lamp flying',
      'close run',
      'close mid',
      'add 1 F mid',
      'unrig arborSling',
      'reopen mid',
    ]);
  });

  it('needs nobody out of the way where the bare set is held', () => {
    // 20 ft up 26.15 lb: with the lock at 50 lb and a brick in doubt it is not, at 24 ft it is.
    const bare = at(24, { items: { lamp: 'away' }, stack: [] });
    const work = [{ fromM: ft(3), toM: ft(61) }];
    const stands = { as: 'fast', resists: 'in', ratedN: 2000 } as const;
    const asked = { start: bare, options: { work }, extra: stands };
    const words = tellWords(asked, [attach, plates('add', 8, 8, 'mid')]);
    expect(words).toEqual([
      'rig stands',
      'attach lamp flying',
      'close run',
      'close mid',
      'add 8 F mid',
      'unrig stands',
      'reopen mid',
      'reopen run',
    ]);
  });
});

describe('restraints of the start', () => {
  it('come off one by one, as they were put on', () => {
    const restraints = [
      restraint({}),
      restraint({ kind: 'arborSling', to: metres(ft(3)) }),
    ] as const;
    const legs: readonly Leg[] = [{ step: null, load: { tied: false } }, flyTo(10)];
    const asked = { start: { restraints } };
    expect(tellWords(asked, legs)).toEqual([
      'close run',
      'unrig bullLine',
      'unrig arborSling',
      'fly 10.00',
    ]);
    const { steps, states } = tellLegs(asked, legs);
    expect(steps[1]).toEqual({ act: 'unrig', restraint: restraints[0] });
    expect(states.map(({ standing }) => standing.restraints.map(({ kind }) => kind))).toEqual([
      ['bullLine', 'arborSling'],
      ['bullLine', 'arborSling'],
      ['arborSling'],
      [],
      [],
    ]);
  });

  it('stay on through a flight that they do not forbid', () => {
    const asked = { start: { restraints: [restraint({})] } };
    const { states } = tellLegs(asked, [flyTo(10)]);
    expect(states.at(-1)?.standing.restraints).toHaveLength(1);
  });
});

describe('steel', () => {
  const goal = { service: 'deadHung', height: metres(ft(24)) } as const;
  const asked = { start: at(24), goal, options: { steelN: 4000 } };
  const hang: Leg = { step: { act: 'hangOnSteel' }, load: { onSteel: true } };
  const steel = (more: Partial<Restraint> = {}) =>
    restraint({ kind: 'deadHangSteel', resists: 'in', from: metres(ft(24)), ...more });
  const kinds = ({ restraints }: Standing): string => restraints.map(({ kind }) => kind).join();

  it('is rigged before anything hangs on it, with its rating', () => {
    const legs = [hang, plates('remove', 8, 0, 'mid')];
    expect(tellWords(asked, legs)).toEqual([
      'close run',
      'rig deadHangSteel',
      'hangOnSteel',
      'close mid',
      'remove 8 F mid',
      'reopen mid',
      'reopen run',
    ]);
    const { steps, states } = tellLegs(asked, legs);
    expect(steps[1]).toEqual({
      act: 'rig',
      restraint: {
        kind: 'deadHangSteel',
        resists: 'in',
        rating: 4000,
        from: ft(24),
        to: ft(24),
        owner: null,
        tag: null,
      },
    });
    expect(states.map(({ standing }) => kinds(standing))).toEqual([
      '',
      '',
      ...Array.from({ length: 6 }, () => 'deadHangSteel'),
    ]);
    expect(states.map(({ standing }) => standing.service)).toEqual([
      'in',
      'in',
      'in',
      ...Array.from({ length: 5 }, () => 'deadHung'),
    ]);
    expect(states.at(-1)?.standing.items).toEqual({ lamp: 'heldElsewhere' });
  });

  it('is rigged anew, once, where nobody knows what the old one bears or where it is', () => {
    for (const unknown of [{ rating: null }, { from: null }, { to: null }]) {
      const restraints = [restraint({}), steel(unknown)];
      const vague = { ...asked, start: at(24, { restraints }) };
      expect(tellWords(vague, [hang])).toContain('rig deadHangSteel');
      const { standing } = tellLegs(vague, [hang]).states.at(-1) ?? {};
      expect(standing === undefined ? '' : kinds(standing)).toBe('bullLine,deadHangSteel');
    }
    const known = { ...asked, start: at(24, { restraints: [steel()] }) };
    expect(tellWords(known, [hang])).toEqual(['close run', 'hangOnSteel', 'reopen run']);
  });

  it('leaves with its load, and nothing else does', () => {
    const onSteel = at(24, {
      service: 'deadHung',
      items: { lamp: 'heldElsewhere' },
      restraints: [restraint({}), steel()],
    });
    const off: Leg = { step: { act: 'takeOffSteel' }, load: { onSteel: false } };
    expect(tellWords({ start: onSteel }, [off])).toEqual(['takeOffSteel']);
    const { states } = tellLegs({ start: onSteel }, [off]);
    expect(states.map(({ standing }) => kinds(standing))).toEqual([
      'bullLine,deadHangSteel',
      'bullLine',
    ]);
  });
});
