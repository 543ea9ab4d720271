/** The balance drawing put together: ground, regions, curve, and last the words. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import type { BalanceFrame } from './balance-frame.ts';
import { balanceFrame } from './balance-frame.ts';
import { bandShapes, groundShapes } from './balance-ground.ts';
import type { Placed } from './balance-labels.ts';
import {
  contactLabel,
  curveBoxes,
  jumpLabel,
  nowLabel,
  regionLabel,
  rootLabel,
} from './balance-labels.ts';
import { besideShapes, curveShapes, regionShapes } from './balance-line.ts';
import { openRegions } from './balance-regions.ts';
import type { BalanceSubject } from './balance-subject.ts';
import { balanceSubject } from './balance-subject.ts';
import { emptyDrawing, needsSentence } from './empty-drawing.ts';
import type { HeightScale } from './height-scale.ts';
import type { Drawing, Shape } from './shape.ts';

export type BalanceOptions = {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering: 14 on a monitor, 16 on the rail's tablet, 12 on paper. */
  readonly letter: number;
  /** Shared with the drawings beside it; fitted to the travel where it is not given. */
  readonly scale?: HeightScale;
  /** Where the set was last recorded: a blue pencil. Screens only; a print knows no now. */
  readonly now?: {
    readonly heightM: number;
    readonly lowN: number;
    readonly highN: number;
  };
  /** Index in `plan.after`: the curve once that has left in view. */
  readonly after?: number;
  /** Another set, or the same as it was before: its curve lies behind, thin and dashed. */
  readonly beside?: { readonly set: SetAssessment; readonly house: House };
};

/** Roots nearer than this to a jump are told by the jump's own label. */
const NEAR_JUMP_M = 0.05;

const labelShapes = (
  frame: BalanceFrame,
  subject: BalanceSubject,
  house: House,
  { now }: BalanceOptions,
): readonly Shape[] => {
  const context = { frame, subject, house };
  const { curve, stretches, lockN } = subject;
  const start: Placed = { shapes: [], taken: curveBoxes(frame, subject) };
  const pointed = now === undefined ? start : nowLabel(start, now, context);
  const regions = openRegions(stretches, lockN);
  const held = regions.reduce(
    (before, region) => regionLabel(before, region, { ...context, limitN: lockN ?? 0 }),
    pointed,
  );
  const jumped = curve.jumps.reduce((before, jump) => jumpLabel(before, jump, context), held);
  const rested = stretches.reduce(
    (before, stretch) => contactLabel(before, stretch, context),
    jumped,
  );
  return curve.equilibria
    .filter(({ height }) =>
      curve.jumps.every((jump) => Math.abs(jump.height - height) > NEAR_JUMP_M),
    )
    .reduce((before, root) => rootLabel(before, root, context), rested).shapes;
};

/** Imbalance against height: height is vertical, arbor heavy lies on the arbor's side. */
export const balanceDrawing = (
  set: SetAssessment,
  house: House,
  options: BalanceOptions,
): Drawing => {
  const { width, height } = options;
  const title = phrase(house, 'Imbalance against height, set {id}', { id: set.lineSet.id });
  const subject = balanceSubject(set, house, options.after);
  if ('needs' in subject) return emptyDrawing(title, needsSentence(subject.needs, house), options);
  const beside = options.beside && balanceSubject(options.beside.set, options.beside.house);
  const other = beside === undefined || 'needs' in beside ? null : beside;
  const frame = balanceFrame(subject, house, options, other?.stretches);
  const regions = openRegions(subject.stretches, subject.lockN);
  return {
    width,
    height,
    title,
    shapes: [
      ...bandShapes(frame, subject),
      ...regionShapes(frame, regions, subject.lockN ?? 0),
      ...groundShapes(frame, house),
      ...(other === null ? [] : [besideShapes(frame, other)]),
      ...curveShapes(frame, subject),
      ...labelShapes(frame, subject, house, options),
    ],
  };
};
