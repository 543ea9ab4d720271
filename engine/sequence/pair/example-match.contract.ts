/**
 * Two orders written by hand, matched. The sets weigh nothing but 20 lb of header each, and their
 * locks hold 50 lb, so only the band, the galleries and the piece itself say what goes.
 */
import { metres } from '#quantities';
import type { ItemPhase, Standing, Step } from '#state';
import { bare, clearItem, ft, setWith } from '../example-jobs.contract.ts';
import type { Course } from './course.ts';
import { PIECE, pairWords, physicsOf } from './example-pairs.contract.ts';
import { matched } from './match.ts';
import type { Match, Spot } from './moves.ts';
import { pairTold } from './tell.ts';

export const light = setWith(
  { header: clearItem(20), lamp: clearItem(5) },
  { bareKg: 0, linesKgPerM: 0 },
);

export const on: Step = { act: 'attach', item: 'header', as: 'flying' };
export const off: Step = { act: 'release', item: 'header' };
export const fly = (toFt: number): Step => ({ act: 'fly', to: metres(ft(toFt)) });
export const add = (gallery = 'upper', kind = 'F'): Step => ({
  act: 'add',
  kind,
  count: 1,
  gallery,
});
export const remove = (gallery = 'upper', kind = 'F'): Step => ({
  act: 'remove',
  kind,
  count: 1,
  gallery,
});

const after = (standing: Standing, step: Step): Standing => {
  const put = (item: string, phase: ItemPhase): Standing => ({
    ...standing,
    items: { ...standing.items, [item]: phase },
  });
  if (step.act === 'fly') return { ...standing, height: step.to };
  if (step.act === 'attach') return put(step.item, 'flying');
  return step.act === 'release' ? put(step.item, 'away') : standing;
};

export type Hand = {
  readonly fromFt: number;
  readonly isOn?: boolean;
  readonly beside?: boolean;
  readonly steps: readonly Step[];
  /** Deeds that its own order does with the run closed. */
  readonly closed?: readonly number[];
  /** Points at which its own order never has the run open. */
  readonly shut?: readonly number[];
};

const courseOf = (hand: Hand): Course => {
  const { fromFt, isOn = false, beside = false, steps, closed = [], shut = [] } = hand;
  const start: Standing = {
    ...bare,
    height: metres(ft(fromFt)),
    items: isOn ? { header: 'flying' } : beside ? { header: 'beside' } : {},
  };
  const standings = [start];
  for (const step of steps) standings.push(after(standings.at(-1) ?? start, step));
  return {
    points: standings.map((standing, index) => ({ standing, mayBeOpen: !shut.includes(index) })),
    deeds: steps.map((step, index) => ({ step, inClosedRun: closed.includes(index) })),
    restraint: null,
  };
};

type Asked = {
  readonly first: Hand;
  readonly second: Hand;
  readonly band: readonly [number, number];
  readonly more?: Partial<Match>;
  readonly most?: number;
};

export const ask = ({ first, second, band, more = {}, most = 5000 }: Asked) => {
  const match: Match = {
    courses: { first: courseOf(first), second: courseOf(second) },
    physics: { first: physicsOf('A', light), second: physicsOf('B', light) },
    shared: PIECE,
    band: { leastM: ft(band[0]), mostM: ft(band[1]) },
    doubtShare: 0,
    ...more,
  };
  const start: Spot = {
    done: { first: 0, second: 0 },
    heightM: { first: ft(first.fromFt), second: ft(second.fromFt) },
  };
  return { match, start, answer: matched(match, start, most) };
};

export const words = (asked: Asked): readonly string[] => {
  const { match, start, answer } = ask(asked);
  if (answer.is !== 'matched') throw new Error(JSON.stringify(answer));
  return pairWords(pairTold(match, start, answer.path, []));
};

export const bare2 = (asked: Asked): readonly string[] =>
  words(asked).filter((word) => !word.startsWith('close') && !word.startsWith('reopen'));

export const flown = (fromFt: number, steps: readonly Step[]): Hand => ({
  fromFt,
  isOn: true,
  steps,
});
