/** One scale of height for drawings that stand beside each other. */
import type { SetAssessment } from '#assessment';
import { fitHeights, type HeightScale } from '#drawings';
import type { House } from '#house';
import { matches } from '../drawing/use-width.ts';

export const LETTER = 14;
/** A phone shows one drawing at a time, whole. */
const heightNow = (): number => (matches('(max-width: 700px)') ? 500 : 600);
/** Above the head blocks when they are not surveyed: a little over the highest stop. */
const OVER_STOP = 1.14;
const NOWHERE_M = 12;

type Drawn = { readonly set: SetAssessment; readonly house: House };

const topOf = ({ set: { lineSet }, house: { stage } }: Drawn): number => {
  const { highStop } = lineSet;
  const stopM = highStop.height.known ? highStop.height.value * OVER_STOP : NOWHERE_M;
  const blocksM = stage.headBlockHeight.known ? stage.headBlockHeight.value : 0;
  return Math.max(stopM, blocksM);
};

export type Size = {
  readonly height: number;
  readonly letter: number;
  readonly scale: HeightScale;
};

export const sizeFor = (drawn: readonly Drawn[]): Size => {
  const height = heightNow();
  const [top, bottom] = [LETTER * 2.6, height - LETTER * 2.6];
  const highM = Math.max(...drawn.map(topOf));
  return { height, letter: LETTER, scale: fitHeights({ lowM: 0, highM, top, bottom }) };
};
