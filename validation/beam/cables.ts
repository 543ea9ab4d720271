/** The batten of check values 4.6: 15 m on five lines, rigid or of quarter-inch wire. */
import { type Exact, exact, over } from '../exact.ts';
import type { ExactBeam, ExactLoad } from './three-moments.ts';

export const FREE_LENGTHS = ['20', '23.5', '27', '30.5', '34'];
const STIFFNESS = '1985813';
export const EI = exact('25797.34');

export const EVEN: readonly ExactLoad[] = [
  { from: exact('0'), to: exact('15'), perLength: exact('100') },
];
export const WITH_POINTS: readonly ExactLoad[] = [
  ...EVEN,
  { at: exact('2'), force: exact('300') },
  { at: exact('9'), force: exact('600') },
];

export const softnesses = (): readonly Exact[] =>
  FREE_LENGTHS.map((length) => over(exact(length), exact(STIFFNESS)));

export const onFive = (loads: readonly ExactLoad[], wires: boolean): ExactBeam => ({
  left: exact('0'),
  right: exact('15'),
  supports: ['0.5', '4', '7.5', '11', '14.5'].map(exact),
  rigidity: EI,
  softness: wires ? softnesses() : [],
  // An even load over spans and overhangs alike is one load for each.
  loads: loads.flatMap((load) => ('at' in load ? [load] : parted(load.perLength))),
});

const PARTS = ['0', '0.5', '4', '7.5', '11', '14.5', '15'];

const parted = (perLength: Exact): readonly ExactLoad[] =>
  PARTS.slice(1).map((to, i) => ({
    from: exact(PARTS[i] ?? '0'),
    to: exact(to),
    perLength,
  }));
