import type { Impact, Run, Snatch } from '#motion';
import { impact, runaway, snatch } from '#motion';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { levelSet, running } from '../level-set.ts';

const off = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

const known = <T>(found: { readonly known: boolean; readonly value?: T }): T => {
  if (found.value === undefined) throw new Error('it is not known');
  return found.value;
};

/** An arbor over a light batten that has just so much speed as a fall through h. */
const arborAfter = (arborKg: number, fallM: number) => {
  const the = levelSet({ battenKg: 1e-9, arborKg, wayM: fallM });
  return { moves: the.moves, run: running(the) };
};

const onSpring = (part: number, factor: number): number => {
  const stiffness = 2e6;
  const sagM = (250 * GRAVITY) / stiffness;
  const { moves, run } = arborAfter(250, part * sagM);
  const { force } = known<Impact>(impact(moves, run, { stiffness }));
  return off(force, factor * 250 * GRAVITY);
};

/** At a steady speed: friction is the imbalance, so the lines carry the arbor's whole weight. */
const steady = (speed: number) => {
  const the = levelSet({ battenKg: 200, arborKg: 300, frictionN: 100 * GRAVITY, wayM: 2 });
  const found = runaway({ ...the, already: { way: 'out', speed } });
  if (!found.moves) throw new Error('it stays');
  return { moves: the.moves, run: found };
};

const STIFFNESS = 90_000;

const peakOf = ({
  moves,
  run,
}: {
  readonly moves: Parameters<typeof snatch>[0];
  readonly run: Run;
}) => known<Snatch>(snatch(moves, run, { stiffness: STIFFNESS })).allLines;

const againstLines = (part: number, factor: number): number => {
  const sagM = (300 * GRAVITY) / STIFFNESS;
  return off(peakOf(steady(part * Math.sqrt(GRAVITY * sagM))), factor * 300 * GRAVITY);
};

/** 200 against 300 kg over 8 m: a = g/5, v² = 16·a, and the lines carry 300·(g − a). */
const letGo = (): number => {
  const the = levelSet({ battenKg: 200, arborKg: 300, wayM: 8 });
  const accelerationMs2 = GRAVITY / 5;
  const swingN = Math.sqrt((300 * accelerationMs2) ** 2 + STIFFNESS * 300 * 16 * accelerationMs2);
  return off(peakOf({ moves: the.moves, run: running(the) }), 300 * GRAVITY + swingN);
};

export const theCase: ValidationCase = {
  id: 'VAL-MOT-07',
  title: 'A runaway that is stopped',
  calculation: 'motion',
  unit: 'relative',
  tolerance: 1e-9,
  run: () => [
    onSpring(1.5, 3),
    onSpring(4, 4),
    onSpring(7.5, 5),
    onSpring(12, 6),
    againstLines(0.5, 1.5),
    againstLines(1, 2),
    againstLines(3, 4),
    letGo(),
  ],
  also: [
    {
      what: '250 kg at 7.6 m/s in 50 mm',
      unit: 'kN',
      tolerance: 0.05,
      run: () => {
        const { moves, run } = arborAfter(250, 7.6 ** 2 / (2 * GRAVITY));
        const { stopping } = known<Impact>(impact(moves, run, { distance: 0.05 }));
        return [Math.abs(stopping / 1000 - 144.4)];
      },
    },
  ],
};
