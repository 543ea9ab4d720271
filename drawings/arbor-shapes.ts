/** An arbor seen from the stage: guide, pan as a bar, pipe weight solid, show bricks ruled. */
import type { Arbor, House, LineSet } from '#house';
import { panHeight, purchaseOf } from '#house';
import type { StackRun } from '#state';
import type { HeightScale } from './height-scale.ts';
import { heightToY } from './height-scale.ts';
import { platesOf } from './plates.ts';
import type { Shape, Style } from './shape.ts';
import { line, rect } from './shape.ts';

/** Bottom of the pan and top of the arbor for a batten height; null where the survey is short. */
export const arborSpan = (
  lineSet: LineSet,
  battenM: number,
): { readonly bottomM: number; readonly topM: number } | null => {
  const { arbor, lowStop } = lineSet;
  const purchase = purchaseOf(lineSet.suspension);
  if (arbor === null || purchase === null) return null;
  if (!arbor.panAtLow.known || !arbor.length.known || !lowStop.height.known) return null;
  const bottomM = panHeight({
    panAtLowM: arbor.panAtLow.value,
    battenM,
    lowStopM: lowStop.height.value,
    purchase,
  });
  return { bottomM, topM: bottomM + arbor.length.value };
};

const PAN = 3;

export const arborOutline = (
  span: { readonly bottomM: number; readonly topM: number },
  { x, width, scale }: { readonly x: number; readonly width: number; readonly scale: HeightScale },
  style: Style,
): readonly Shape[] => {
  const [top, bottom] = [heightToY(scale, span.topM), heightToY(scale, span.bottomM)];
  return [
    rect(x - width / 2, top, width, bottom - top, { fill: 'paper', ...style }),
    line(x - width / 2 - 2, bottom, x + width / 2 + 2, bottom, {
      stroke: style.stroke ?? 'ink',
      weight: style.dash === undefined ? PAN : 'mid',
    }),
  ];
};

/** Ruling closer than this runs together; then every second plate is ruled, or every fourth. */
const RULING_APART = 2.4;

/** The plates inside the outline, to the same scale of height. */
export const arborPlates = (
  runs: readonly StackRun[],
  { arbor, house }: { readonly arbor: Arbor; readonly house: House },
  {
    x,
    width,
    scale,
    bottomM,
    thicker = 1,
  }: {
    readonly x: number;
    readonly width: number;
    readonly scale: HeightScale;
    readonly bottomM: number;
    /** On a small drawing plates are drawn so many times as thick, and it says so. */
    readonly thicker?: number;
  },
): readonly Shape[] => {
  const stack = platesOf(runs, house);
  if (stack === null) return [];
  const floorM = bottomM + (arbor.panThickness.known ? arbor.panThickness.value : 0);
  const yOf = (aboveM: number) => heightToY(scale, floorM + aboveM * thicker);
  const inner = width - 3;
  let ruledAt = Number.POSITIVE_INFINITY;
  const solid = stack.bands
    .filter(({ tag }) => tag === 'pipe')
    .map(({ bottomM: fromM, topM }) =>
      rect(x - inner / 2, yOf(topM), inner, yOf(fromM) - yOf(topM), { fill: 'solid' }),
    );
  const ruled = stack.plates
    .filter(({ look }) => look === 'outlined')
    .flatMap(({ bottomM: fromM, thicknessM }) => {
      const y = yOf(fromM + thicknessM);
      if (ruledAt - y < RULING_APART) return [];
      ruledAt = y;
      return [line(x - inner / 2, y, x + inner / 2, y, { stroke: 'ink', weight: 'thin' })];
    });
  const top = yOf(stack.heightM);
  const lid = line(x - inner / 2, top, x + inner / 2, top, { stroke: 'ink', weight: 'thin' });
  return [...solid, ...ruled, ...(stack.plates.length === 0 ? [] : [lid])];
};
