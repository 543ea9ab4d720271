import { type Measure, measure, type Term, type Working } from '#findings';
import { hangingLoomKg, loomsOf } from '../hang/looms.ts';
import { lack } from '../known-values.ts';
import type { Lack, SetCase } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';

/** The most that a batten carries, all masses at their worst. */
export type BattenLoad = {
  readonly worstKg: number;
  readonly hungKg: number;
  readonly loomKg: number;
  readonly toleranceKg: number;
  /** Batten height of the worst; null where it is the same everywhere. */
  readonly heightM: number | null;
};

/**
 * All that hangs, with as much loom as hangs at the top of the travel, where a loom hangs most.
 * Null where it cannot be said; the lacks say why. A hang that cannot be weighed is missed by
 * UNK-001.
 */
export const battenLoad = ({
  set: { hang, hung, lineSet },
}: SetCase): { readonly load: BattenLoad | null; readonly lacks: readonly Lack[] } => {
  if (hang === null || !hung.known) return { load: null, lacks: [] };
  const { looms, lacks: loomLacks } = loomsOf(hang.items);
  const lacks = [...loomLacks];
  const { height } = lineSet.highStop;
  if (looms.length > 0 && !height.known) lacks.push(lack('height of the high stop', BLOCKS));
  if (lacks.length > 0) return { load: null, lacks };
  const { withoutLoom: hungKg, uncertainty } = hung.value;
  if (uncertainty === null) lacks.push(lack('tolerance of a mass that hangs', BLOCKS));
  const heightM = looms.length > 0 && height.known ? height.value : null;
  const loomKg = looms.reduce((sum, loom) => sum + hangingLoomKg(loom, heightM ?? 0), 0);
  const toleranceKg = uncertainty ?? 0;
  const worstKg = hungKg + loomKg + toleranceKg;
  return { load: { worstKg, hungKg, loomKg, toleranceKg, heightM }, lacks };
};

const BLOCKS = 'load of the batten at its worst';

export const loadTerms = ({ hungKg, loomKg, toleranceKg }: BattenLoad): readonly Term[] => [
  term('m', 'all that hangs, without loom', hungKg, 'mass'),
  term('l', 'loom that hangs at the top of the travel', loomKg, 'mass'),
  term('t', 'tolerances, all at their worst', toleranceKg, 'mass'),
];

export const loadWorking = (
  load: BattenLoad,
  limit: { readonly value: Measure; readonly source: string },
): Working =>
  workedOut(
    'load of the batten',
    'm + l + t',
    loadTerms(load),
    term('load', 'most that the batten carries', load.worstKg, 'mass'),
    { source: 'trade formula C14, C86', limit },
  );

export const loadFacts = (load: BattenLoad, fullKg: number) => ({
  height: load.heightM === null ? 'every height' : measure(load.heightM, 'length'),
  hung: measure(load.hungKg, 'mass'),
  loom: measure(load.loomKg, 'mass'),
  tolerance: measure(load.toleranceKg, 'mass'),
  full: measure(fullKg, 'mass'),
});
