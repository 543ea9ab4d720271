/** What is rigged on a set for a while, and the steel that carries one. */
import type { SetAssessment } from '#assessment';
import { unreachable } from '#outcome';
import type { Restraint, Standing } from '#state';
import { arborSpan } from './arbor-shapes.ts';
import type { OrderFrame } from './order-frame.ts';
import type { Shape, Style } from './shape.ts';
import { circle, group, line, polyline, rect } from './shape.ts';

const ROPE: Style = { stroke: 'ink', weight: 'mid' };

/** A rope from the batten to a ring on an anchor bar. */
const tiedDown = (x: number, battenY: number, { deckY }: OrderFrame): readonly Shape[] => [
  line(x, battenY, x, deckY - 7, ROPE),
  circle(x, deckY - 5, 2.4, { stroke: 'ink', weight: 'mid', fill: 'paper' }),
  line(x - 6, deckY - 1, x + 6, deckY - 1, { stroke: 'ink', weight: 'thick' }),
];

const trestle = (x: number, battenY: number, { deckY }: OrderFrame): Shape =>
  polyline(
    [
      { x: x - 5, y: deckY },
      { x, y: battenY + 2 },
      { x: x + 5, y: deckY },
    ],
    { ...ROPE, fill: 'paper' },
  );

/** Round the arbor and made fast to the steel of its wall. */
const slingShapes = (
  set: SetAssessment,
  { height }: Pick<Standing, 'height'>,
  { at, y, guideX, arborHalf, side }: OrderFrame,
): readonly Shape[] => {
  const span = arborSpan(set.lineSet, height);
  if (span === null) return [];
  const slungY = y(span.topM) + 3;
  return [
    polyline(
      [
        { x: at(3), y: slungY },
        { x: guideX + side * arborHalf, y: slungY },
        { x: guideX + side * arborHalf, y: slungY + 5 },
        { x: at(3), y: slungY + 5 },
      ],
      ROPE,
    ),
    circle(at(4), slungY + 2.5, 3, { stroke: 'ink', weight: 'mid', fill: 'paper' }),
  ];
};

const restraintShapes = (
  { kind }: Pick<Restraint, 'kind'>,
  { set, standing, frame }: { set: SetAssessment; standing: Standing; frame: OrderFrame },
): readonly Shape[] => {
  const { xOf, battenM, y, guideX, deckY } = frame;
  const battenY = y(standing.height);
  const thirds = [0.3, 0.7].map((share) =>
    xOf(battenM.left + (battenM.right - battenM.left) * share),
  );
  switch (kind) {
    case 'bullLine':
      return thirds.flatMap((x) => tiedDown(x, battenY, frame));
    case 'pinnedPiece':
      return tiedDown(xOf((battenM.left + battenM.right) / 2), deckY - 14, frame);
    case 'stands':
      return thirds.map((x) => trestle(x, battenY, frame));
    case 'arborSling':
      return slingShapes(set, standing, frame);
    case 'winch':
      return [
        rect(guideX - 7, deckY - 10, 14, 10, { ...ROPE, fill: 'paper' }),
        circle(guideX, deckY - 5, 3, { fill: 'ink' }),
      ];
    case 'choke':
      return [
        line(guideX - 6, deckY - 18, guideX + 6, deckY - 12, ROPE),
        line(guideX - 6, deckY - 12, guideX + 6, deckY - 18, ROPE),
      ];
    case 'deadHangSteel':
      return [];
    default:
      return unreachable(kind);
  }
};

/** Two rods from the steel above, tight where they carry the set, dashed where they only hang. */
const steelShapes = ({ height, service }: Standing, frame: OrderFrame): readonly Shape[] => {
  const { xOf, battenM, y, topM } = frame;
  const style: Style =
    service === 'deadHung'
      ? { stroke: 'ink', weight: 'thick' }
      : { stroke: 'ink', weight: 'thin', dash: 'hidden' };
  return [0.2, 0.8].map((share) => {
    const x = xOf(battenM.left + (battenM.right - battenM.left) * share);
    return line(x, y(topM), x, y(height), style);
  });
};

export const heldShapes = (
  set: SetAssessment,
  standing: Standing,
  frame: OrderFrame,
): readonly Shape[] => {
  const isSteel =
    standing.service === 'deadHung' ||
    standing.restraints.some(({ kind }) => kind === 'deadHangSteel');
  return [
    ...(isSteel ? [group(steelShapes(standing, frame), { part: 'steel' })] : []),
    ...standing.restraints.flatMap((each) => {
      const shapes = restraintShapes(each, { set, standing, frame });
      return shapes.length === 0 ? [] : [group(shapes, { part: each.kind })];
    }),
  ];
};
