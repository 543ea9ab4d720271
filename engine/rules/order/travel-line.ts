/** The imbalance over one move, as straight pieces between every place where anything changes. */
import { assert, unreachable } from '#outcome';
import type { ItemPhase, OrderNode, OrderPhysics, Standing } from '#state';
import { isSameHeight } from '../limits.ts';
import { isSpanned } from './holds.ts';
import type { Scene } from './scene.ts';

/** One end of a piece, seen from inside the piece. */
export type PieceEnd = { readonly heightM: number; readonly atN: number; readonly doubtN: number };

/** In the direction of travel. */
export type Piece = {
  readonly start: PieceEnd;
  readonly end: PieceEnd;
  /** Whether a piece of scenery meets or leaves the deck where this one starts. */
  readonly startsAtContact: boolean;
};

/**
 * What hangs while a set moves. Out: all that rests or lies slack is lifted; but picks that are
 * slack stay so up to the working height, where a piece lies on its horses (the verdict says that
 * it takes them for long enough). In: what rests on horses stays on them and its picks go slack;
 * what stands at its height of contact comes along.
 */
export const phasesMoving = (
  physics: OrderPhysics,
  { items, height }: Standing,
  toM: number,
): Standing['items'] => {
  const isOut = toM > height;
  const moving = (id: string, phase: ItemPhase): ItemPhase => {
    switch (phase) {
      case 'attachedResting': {
        const contactM = physics.contactM(id);
        const stands = contactM !== null && isSameHeight(contactM, height);
        return isOut || stands ? 'flying' : 'attachedSlack';
      }
      case 'attachedSlack':
        return isOut && !staysSlack(physics, id, toM) ? 'flying' : phase;
      case 'flying':
      case 'away':
      case 'beside':
      case 'heldElsewhere':
        return phase;
      default:
        return unreachable(phase);
    }
  };
  return Object.fromEntries(Object.entries(items).map(([id, phase]) => [id, moving(id, phase)]));
};

/** Only a piece that lies below its height of contact has picks to be slack. */
const staysSlack = ({ workingM, contactM }: OrderPhysics, id: string, toM: number): boolean => {
  const meetsM = contactM(id);
  const isLow = toM <= workingM || isSameHeight(toM, workingM);
  return isLow && meetsM !== null && meetsM > workingM;
};

export const piecesOf = (
  { physics, standing, options }: Scene,
  items: Standing['items'],
  toM: number,
): readonly Piece[] => {
  const nodes = physics.curve({ stack: standing.stack, items });
  const [lowM, highM] = [Math.min(standing.height, toM), Math.max(standing.height, toM)];
  const ends = standing.restraints.filter(isSpanned).flatMap(({ from, to }) => [from, to]);
  const inside = [...nodes.map(({ heightM }) => heightM), ...ends]
    .filter((heightM) => heightM > lowM && heightM < highM)
    .filter((heightM) => !isSameHeight(heightM, lowM) && !isSameHeight(heightM, highM))
    .toSorted((one, other) => one - other);
  const apart: number[] = [lowM];
  for (const heightM of inside) {
    if (!isSameHeight(heightM, apart.at(-1) ?? lowM)) apart.push(heightM);
  }
  apart.push(highM);
  const doubtAt = doubtOf(physics, { ...standing, items }, options.doubt);
  const isOut = toM > standing.height;
  const pieces = apart.slice(1).map((upperM, index): Piece => {
    const lowerM = apart[index] ?? lowM;
    const read = between(nodes, (lowerM + upperM) / 2);
    const doubt = doubtAt(lowerM, upperM);
    const lower = { heightM: lowerM, atN: read(lowerM), doubtN: doubt.lowerN };
    const upper = { heightM: upperM, atN: read(upperM), doubtN: doubt.upperN };
    const [start, end] = isOut ? [lower, upper] : [upper, lower];
    return { start, end, startsAtContact: isContact(nodes, start.heightM) };
  });
  return isOut ? pieces : pieces.toReversed();
};

const isContact = (nodes: readonly OrderNode[], heightM: number): boolean =>
  nodes.some(
    (node) => isSameHeight(node.heightM, heightM) && node.contact.highN > node.contact.lowN,
  );

/** The straight line of the stretch that has a height inside it. */
const between = (nodes: readonly OrderNode[], middleM: number): ((heightM: number) => number) => {
  const above = nodes.findIndex(({ heightM }) => heightM > middleM);
  const [lower, upper] = [nodes[above - 1], nodes[above]];
  assert(lower !== undefined && upper !== undefined, 'the curve covers the whole travel');
  const slope = (upper.belowN - lower.aboveN) / (upper.heightM - lower.heightM);
  return (heightM) => lower.aboveN + slope * (heightM - lower.heightM);
};

/**
 * Doubt at the ends of a piece, seen from inside it: what hangs grows in a straight line between
 * two nodes, so two heights inside give both ends.
 */
const doubtOf =
  (physics: OrderPhysics, standing: Standing, doubt: 'worst' | 'none') =>
  (lowerM: number, upperM: number): { readonly lowerN: number; readonly upperN: number } => {
    if (doubt === 'none') return { lowerN: 0, upperN: 0 };
    const third = (upperM - lowerM) / 3;
    const at = (heightM: number): number =>
      physics.at({ ...standing, height: heightM as Standing['height'] }).doubtN;
    const [oneN, twoN] = [at(lowerM + third), at(upperM - third)];
    return { lowerN: 2 * oneN - twoN, upperN: 2 * twoN - oneN };
  };
