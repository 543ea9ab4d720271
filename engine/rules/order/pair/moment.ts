/** One step of a pair with all that its rules ask about it. */
import type { PairStep, Standing } from '#state';
import type { Scene } from '../scene.ts';
import type { OrderOptions } from '../verdict.ts';
import { type PairToJudge, SIDES, type Side } from './pair-verdict.ts';
import type { Both } from './replay.ts';

export type Moment = {
  readonly pair: PairToJudge;
  readonly options: OrderOptions;
  /** −1 is the start, which has no step. */
  readonly index: number;
  readonly step: PairStep | null;
  readonly before: Both;
  readonly after: Both;
};

type Piece = PairToJudge['shared'][number];

export type Coupled = {
  readonly onBoth: readonly Piece[];
  readonly onOne: readonly { readonly piece: Piece; readonly has: Side }[];
};

const isOn = ({ items }: Standing, id: string): boolean => {
  const phase = items[id];
  return phase !== undefined && phase !== 'away' && phase !== 'beside';
};

export const coupledIn = ({ shared }: PairToJudge, both: Both): Coupled => {
  const on = (piece: Piece): readonly Side[] =>
    SIDES.filter((side) => isOn(both[side], piece[side]));
  return {
    onBoth: shared.filter((piece) => on(piece).length === 2),
    onOne: shared.flatMap((piece) => {
      const [has, also] = on(piece);
      return has === undefined || also !== undefined ? [] : [{ piece, has }];
    }),
  };
};

/** One set of the pair, as the rules for one set see it. */
export const sceneOf = ({ pair, options, index }: Moment, side: Side, both: Both): Scene => ({
  physics: pair[side].physics,
  options,
  step: index,
  standing: both[side],
  stock: {},
  seen: null,
});

export const setOf = ({ pair }: Pick<Moment, 'pair'>, side: Side): string => pair[side].physics.set;

/** Whose step it is; a common flight is of both, and is spoken of with the first. */
export const sideOf = (moment: Moment, step: PairStep): Side =>
  'together' in step || step.set === setOf(moment, 'first') ? 'first' : 'second';

export const isFlight = (step: PairStep | null): boolean =>
  step !== null && ('together' in step || step.step.act === 'fly');

/** All that pieces weigh on both sets together, N; at their heaviest where masses are in doubt. */
export const wholeOf = ({ pair, options }: Moment, pieces: readonly Piece[]): number =>
  pieces
    .flatMap((piece) => SIDES.map((side) => [pair[side].physics, piece[side]] as const))
    .reduce((sum, [physics, id]) => {
      const mostN = physics.itemMostN(id);
      const isWorst = options.doubt === 'worst';
      return sum + (isWorst ? mostN : (mostN + physics.itemLeastN(id)) / 2);
    }, 0);
