/** Who does a step, at true size, where they stand to do it. */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { Standing, Step } from '#state';
import { arborSpan } from './arbor-shapes.ts';
import type { OrderFrame } from './order-frame.ts';
import type { Point, Shape } from './shape.ts';
import { circle, group, line, point, polyline, rect } from './shape.ts';

/** A grown person, as a builder draws one for scale. */
const TALL_M = 1.75;
const HEAD = 0.13;
const SHOULDER = 0.8;
const HIP = 0.48;

const LIMB = { stroke: 'ink', weight: 'mid' } as const;

const figure = (feet: Point, reach: Point | null, { scale }: OrderFrame): Shape => {
  const tall = TALL_M * scale.perMetre;
  const { x, y } = feet;
  const shoulder = point(x, y - tall * SHOULDER);
  const hip = point(x, y - tall * HIP);
  const stride = tall * 0.14;
  return group(
    [
      circle(x, y - tall * (1 - HEAD), tall * HEAD, { fill: 'ink' }),
      line(shoulder.x, shoulder.y, hip.x, hip.y, { stroke: 'ink', weight: 'pencil' }),
      polyline([point(x - stride, y), hip, point(x + stride, y)], LIMB),
      ...(reach === null ? [] : [line(shoulder.x, shoulder.y, reach.x, reach.y, LIMB)]),
    ],
    { part: 'person' },
  );
};

/** An arm is no longer than an arm, however far off the thing is that it points to. */
const within = (from: Point, to: Point, most: number): Point => {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const share = far <= most || far === 0 ? 1 : most / far;
  return point(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
};

const ARM_M = 0.95;
const BRICK = { long: 8, thick: 3 };

type Scene = {
  readonly set: SetAssessment;
  readonly house: House;
  readonly standing: Standing;
  readonly frame: OrderFrame;
};

/** At the edge of the gallery, with a brick in hand between floor and stack. */
const loader = (
  { gallery }: Extract<Step, { readonly act: 'add' | 'remove' }>,
  topOfStackM: number | null,
  { house, frame }: Scene,
): readonly Shape[] => {
  const floor = house.galleries.find(({ id }) => id === gallery)?.floor;
  if (floor === undefined || !floor.known) return [];
  const { at, y, ledge, scale, guideX, side, arborHalf } = frame;
  const feet = point(at(ledge * 0.62), y(floor.value) - 1);
  const shoulder = point(feet.x, feet.y - TALL_M * scale.perMetre * SHOULDER);
  const top = topOfStackM === null ? shoulder.y : y(topOfStackM);
  const hand = within(shoulder, point(guideX - side * arborHalf, top), ARM_M * scale.perMetre);
  return [
    figure(feet, hand, frame),
    group(
      [
        rect(hand.x - BRICK.long / 2, hand.y - BRICK.thick, BRICK.long, BRICK.thick, {
          fill: 'blue',
        }),
      ],
      {
        part: 'brick in hand',
      },
    ),
  ];
};

/** At the lowest rail, a hand on the line; somebody on the deck watches the batten. */
const operator = ({ house, frame }: Scene, isWatched: boolean): readonly Shape[] => {
  const floors = house.rails.flatMap(({ floor }) => (floor.known ? [floor.value as number] : []));
  const railM = Math.min(...floors, Number.POSITIVE_INFINITY);
  if (!Number.isFinite(railM)) return [];
  const { at, y, ledge, scale, guideX, deckY, xOf, battenM, side } = frame;
  const feet = point(at(ledge * 0.62), y(railM) - 1);
  const shoulderY = feet.y - TALL_M * scale.perMetre * SHOULDER;
  const hand = within(
    point(feet.x, shoulderY),
    point(guideX, shoulderY + 3),
    ARM_M * scale.perMetre,
  );
  const nearEnd = xOf(side === 1 ? battenM.left : battenM.right) - side * 6;
  return [
    figure(feet, hand, frame),
    ...(isWatched ? [figure(point(nearEnd, deckY - 1), null, frame)] : []),
  ];
};

/** Beside the batten and not under it, one at each end. */
const riggers = ({ standing, frame }: Scene): readonly Shape[] => {
  const { xOf, battenM, y, deckY, scale } = frame;
  return [
    [xOf(battenM.left), 1],
    [xOf(battenM.right), -1],
  ].map(([x = 0, way = 1]) => {
    const feet = point(x - way * 7, deckY - 1);
    const shoulder = point(feet.x, feet.y - TALL_M * scale.perMetre * SHOULDER);
    const hand = within(shoulder, point(x, y(standing.height)), ARM_M * scale.perMetre);
    return figure(feet, hand, frame);
  });
};

const marshal = (
  { zone }: Extract<Step, { readonly act: 'close' | 'reopen' }>,
  { frame }: Scene,
): readonly Shape[] => {
  const { guideX, side, arborHalf, deckY, xOf, battenM } = frame;
  const x =
    zone.zone === 'run'
      ? xOf(side === 1 ? battenM.right : battenM.left) + side * 6
      : guideX + side * (arborHalf + 10);
  const arm = TALL_M * frame.scale.perMetre * SHOULDER;
  return [figure(point(x, deckY - 1), point(x - side * 7, deckY - arm), frame)];
};

const topOfStack = ({ set, standing }: Scene): number | null =>
  arborSpan(set.lineSet, standing.height)?.bottomM ?? null;

/** Nobody is drawn where nobody is named for the step, or where the floor is not surveyed. */
export const peopleShapes = (
  step: Step,
  stackTopM: number | null,
  scene: Scene,
): readonly Shape[] => {
  switch (step.act) {
    case 'add':
    case 'remove':
      return loader(step, stackTopM ?? topOfStack(scene), scene);
    case 'fly':
      return operator(scene, true);
    case 'ease':
      return operator(scene, false);
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'hangOnSteel':
    case 'takeOffSteel':
    case 'rig':
    case 'unrig':
      return riggers(scene);
    case 'close':
    case 'reopen':
      return marshal(step, scene);
    default:
      return unreachable(step);
  }
};
