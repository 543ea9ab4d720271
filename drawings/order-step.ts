/**
 * One moment of an order of work as a little section from the house: arbor at its true height with
 * its stack, who stands where, batten with what hangs, what lies, what carries, what is closed; and
 * what the set would set free, as bricks let fall at the section's own scale of height.
 */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { FOOT } from '#quantities';
import type { OrderState } from '#rules';
import type { OrderPhysics, Standing, Step } from '#state';
import { phrase } from '#texts';
import { letFall } from './let-fall.ts';
import {
  arborAt,
  beforeShapes,
  buildingShapes,
  faintShapes,
  ropeShapes,
  stopShapes,
} from './order-building.ts';
import { type OrderFrame, type OrderStepOptions, orderFrame } from './order-frame.ts';
import { peopleShapes } from './order-people.ts';
import { battenShape, pieceShapes } from './order-pieces.ts';
import { heldShapes } from './order-restraints.ts';
import { closedShapes, pointedZone } from './order-zones.ts';
import { heightWords, imbalanceWords } from './printed.ts';
import type { Drawing, Pen, Shape } from './shape.ts';
import { group, lettering, line, rect } from './shape.ts';

export type OrderMoment = {
  readonly set: SetAssessment;
  readonly physics: OrderPhysics;
  readonly state: OrderState;
  /** The step that led here; null at the start. */
  readonly step: Step | null;
  readonly before: Standing | null;
  readonly isHeld: boolean;
};

const BRICK = { long: 12, thick: 4 };
const SAME_M = 1e-6;

/** Bricks of the same energy at the height that they would fall from, on a line to the deck. */
const energyShapes = (
  { state, physics, isHeld }: OrderMoment,
  frame: OrderFrame,
): readonly Shape[] => {
  const fall = state.releasableJ === null ? null : letFall(state.releasableJ, physics.bricks);
  if (fall === null) return [];
  const { fallX, deckY, y, topM } = frame;
  const pen: Pen = isHeld ? 'ink' : 'red';
  // Where they do not fit under the top of the drawing they hang lower; the figure says how high.
  const tall = fall.count * (BRICK.thick + 1);
  const top = Math.max(1, y(Math.min(fall.fallM, topM)) - tall);
  const foot = Math.min(top + tall, deckY);
  const bricks = Array.from({ length: fall.count }, (_, index) =>
    rect(fallX - BRICK.long / 2, foot - (index + 1) * (BRICK.thick + 1), BRICK.long, BRICK.thick, {
      fill: pen,
    }),
  );
  return [
    group(
      [line(fallX, foot, fallX, deckY, { stroke: pen, weight: 'mid', dash: 'plan' }), ...bricks],
      {
        part: 'energy',
      },
    ),
  ];
};

/** A bar of true height beside the section, whose widths have another scale. */
const heightBar = ({ units }: House, frame: OrderFrame): Shape => {
  const { scale, deckY, at, width, side, letter } = frame;
  const isFeet = units === 'customary';
  const tall = (isFeet ? 10 * FOOT : 2) * scale.perMetre;
  const x = at(width - 3);
  const outline = { stroke: 'ink', weight: 'thin' } as const;
  return group(
    [
      rect(x - 2, deckY - tall, 4, tall / 2, { ...outline, fill: 'paper' }),
      rect(x - 2, deckY - tall / 2, 4, tall / 2, { ...outline, fill: 'solid' }),
      lettering(
        x + side * 3,
        // Beside the words of the zones: over the bar it would lie on the brick that is let fall.
        deckY + letter * 1.25,
        isFeet ? '10\u00A0ft' : '2\u00A0m',
        letter,
        {
          anchor: side === 1 ? 'end' : 'start',
          pen: 'ink2',
        },
      ),
    ],
    { part: 'scale bar' },
  );
};

const letteredShapes = (
  { state }: OrderMoment,
  house: House,
  frame: OrderFrame,
): readonly Shape[] => {
  if (frame.isLettered !== true) return [];
  const { height } = state.standing;
  const { xOf, battenM, y, letter } = frame;
  const words = phrase(house, 'batten {at}', { at: heightWords(house, height) });
  return [
    heightBar(house, frame),
    lettering(
      (xOf(battenM.left) + xOf(battenM.right)) / 2,
      y(height) - letter * 0.5,
      words,
      letter,
      {
        anchor: 'middle',
        weight: 'strong',
        backed: true,
      },
    ),
  ];
};

const titleOf = ({ set, state }: OrderMoment, house: House): string => {
  const { imbalance, standing } = state;
  const at = phrase(house, 'batten at {at}', { at: heightWords(house, standing.height) });
  const ends = [...new Set([imbalance.lowN, imbalance.highN].map((n) => imbalanceWords(house, n)))];
  return phrase(house, 'Set {id}, {at}, {ends}', {
    id: set.lineSet.id,
    at,
    ends: ends.join(phrase(house, ' to ')),
  });
};

/** The section with the step that led to it; nobody and nothing moves at the start. */
const actionShapes = (moment: OrderMoment, house: House, frame: OrderFrame) => {
  const { step, before, set, physics, state } = moment;
  const { standing } = state;
  if (step === null) return { behind: [], front: [] };
  const isMoved = before !== null && Math.abs(before.height - standing.height) > SAME_M;
  return {
    behind: isMoved ? [beforeShapes(set, frame, before)] : [],
    front: [
      ...pointedZone(step, house, frame),
      ...peopleShapes(step, physics.topOfStackM(standing), { set, house, standing, frame }),
    ],
  };
};

export const orderStepDrawing = (
  moment: OrderMoment,
  house: House,
  options: OrderStepOptions,
): Drawing => {
  const { set, state } = moment;
  const { standing } = state;
  const frame = orderFrame(set, house, options);
  const { behind, front } = actionShapes(moment, house, frame);
  return {
    width: options.width,
    height: options.height,
    title: titleOf(moment, house),
    shapes: [
      ...closedShapes(standing, house, frame),
      ...buildingShapes(house, frame),
      ...behind,
      ...ropeShapes(set, house, frame, standing),
      ...arborAt(set, house, frame, standing),
      ...pieceShapes(set, standing, frame),
      ...stopShapes(set, frame, standing),
      ...heldShapes(set, standing, frame),
      battenShape(frame, standing),
      ...front,
      ...energyShapes(moment, frame),
      ...letteredShapes(moment, house, frame),
    ],
  };
};

/** A zone closed or opened: the set does not move, so it is drawn faint, and narrow. */
export const orderZoneDrawing = (
  moment: OrderMoment,
  house: House,
  options: OrderStepOptions,
): Drawing => {
  const { set, state } = moment;
  const { standing } = state;
  const frame = orderFrame(set, house, options);
  const { front } = actionShapes(moment, house, frame);
  return {
    width: options.width,
    height: options.height,
    title: titleOf(moment, house),
    shapes: [
      ...closedShapes(standing, house, frame),
      ...buildingShapes(house, frame),
      faintShapes(set, frame, standing),
      ...front,
    ],
  };
};
