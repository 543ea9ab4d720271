/** A move: the whole way is guarded, never its two ends only (R6). */
import { type Finding, measure } from '#findings';
import type { Restraint, Step } from '#state';
import { isAbove, isSameHeight } from '../limits.ts';
import { breach, unheld } from './breach.ts';
import { type Done, gravest } from './done.ts';
import {
  type Direction,
  type Hold,
  haulOf,
  isRunClosed,
  isSpanned,
  movingHold,
  planningLimitN,
  restraintWords,
} from './holds.ts';
import { type Impossible, impossible } from './impossible.ts';
import { loadOf, type Scene, shortOf } from './scene.ts';
import { type Piece, type PieceEnd, phasesMoving, piecesOf } from './travel-line.ts';
import type { Breach } from './verdict.ts';

type FlyStep = Extract<Step, { readonly act: 'fly' }>;

export const handleFly = (scene: Scene, { to }: FlyStep): Done | Impossible => {
  const { physics, standing } = scene;
  if (!isOnTravel(scene, to)) {
    return impossible('offTravel', scene.step, `${to} m`, travelWords(scene));
  }
  if (isSameHeight(to, standing.height)) return { scene, breaches: [], proofs: [] };
  const items = phasesMoving(physics, standing, to);
  const pieces = piecesOf(scene, items, to);
  const moved: Scene = { ...scene, seen: null, standing: { ...standing, items, height: to } };
  const onWay = holdBreaches(scene, pieces, to);
  const short = shortOf(moved, loadOf(moved), physics.lockLimitN);
  return {
    scene: moved,
    breaches: [
      ...(isRunClosed(standing) ? [] : [breach(scene, { rule: 'ORD-012' })]),
      ...tiedBreaches(scene, to),
      ...unlockBreaches(scene),
      ...onWay,
      ...(short === null || onWay.length > 0
        ? []
        : [unheld(moved, 'ORD-008', short, { facts: wayFacts(scene, to, to) })]),
      ...handBreaches(scene, pieces, { items, to }),
    ],
    proofs: [
      'inch test before it is flown: an inch out, an inch in, then lock and look',
      ...(landsAt(moved)
        ? ['watch the landing from its own level, and stop on the mark, no lower']
        : []),
    ],
  };
};

const landsAt = ({ physics, standing: { items, height } }: Scene): boolean =>
  Object.keys(items).some((id) => {
    const contactM = items[id] === 'flying' ? physics.contactM(id) : null;
    return contactM !== null && isSameHeight(contactM, height);
  });

export const isOnTravel = ({ physics }: Pick<Scene, 'physics'>, heightM: number): boolean =>
  Number.isFinite(heightM) &&
  (heightM >= physics.lowStop.heightM || isSameHeight(heightM, physics.lowStop.heightM)) &&
  (heightM <= physics.highStop.heightM || isSameHeight(heightM, physics.highStop.heightM));

export const travelWords = ({ physics }: Pick<Scene, 'physics'>): string =>
  `from ${physics.lowStop.heightM} m to ${physics.highStop.heightM} m`;

/** What the lock counts for under way: with people where it runs, its planning limit. */
const lockUnderWayN = ({ physics, standing, options }: Scene): number =>
  options.faults === 'skip' || isRunClosed(standing) ? physics.lockLimitN : planningLimitN(physics);

const TIES: readonly Restraint['kind'][] = ['arborSling', 'deadHangSteel', 'pinnedPiece', 'choke'];

/** Ties stop a set, and stands stop a batten that comes in. */
const tiedBreaches = (scene: Scene, toM: number): readonly Breach[] => {
  const { standing } = scene;
  const [lowM, highM] = [Math.min(standing.height, toM), Math.max(standing.height, toM)];
  const isIn = toM < standing.height;
  const tie = standing.restraints
    .filter(isSpanned)
    .filter(({ from, to }) => from <= highM && to >= lowM)
    .find(({ kind }) => TIES.includes(kind) || (kind === 'stands' && isIn));
  return tie === undefined
    ? []
    : [breach(scene, { rule: 'ORD-011', facts: { what: restraintWords(tie) } })];
};

/** A bull line lets the lock be opened past its limit on the arbor heavy side, and there only. */
const unlockBreaches = (scene: Scene): readonly Breach[] => {
  const { standing } = scene;
  const { lowN, highN, doubt } = loadOf(scene);
  const lockN = lockUnderWayN(scene);
  const lock: Hold = { what: 'the rope lock', limitN: lockN, isLock: true };
  const bull = movingHold(standing, standing.height, 'out', lockN);
  const [inN, outN] = [lowN + doubt.mostN, highN + doubt.leastN];
  return gravest([
    ...(isAbove(inN, lockN)
      ? [unheld(scene, 'ORD-007', { imbalanceN: inN, byN: inN - lockN, hold: lock })]
      : []),
    ...(isAbove(-outN, bull.limitN)
      ? [unheld(scene, 'ORD-007', { imbalanceN: outN, byN: -outN - bull.limitN, hold: bull })]
      : []),
  ]);
};

type Excess = {
  readonly piece: Piece;
  readonly end: PieceEnd;
  readonly imbalanceN: number;
  readonly byN: number;
  readonly hold: Hold;
  readonly direction: Direction;
};

const worstAt = ({ atN, doubtN }: PieceEnd, direction: Direction): number =>
  direction === 'in' ? atN + doubtN : doubtN - atN;

const excessesOf = (
  pieces: readonly Piece[],
  holdOf: (middleM: number, direction: Direction) => Hold,
): readonly Excess[] =>
  pieces.flatMap((piece) =>
    (['in', 'out'] as const).flatMap((direction) => {
      const middleM = (piece.start.heightM + piece.end.heightM) / 2;
      const hold = holdOf(middleM, direction);
      return [piece.start, piece.end].flatMap((end) => {
        const sizeN = worstAt(end, direction);
        if (!isAbove(sizeN, hold.limitN)) return [];
        const imbalanceN = direction === 'in' ? sizeN : -sizeN;
        return [{ piece, end, imbalanceN, byN: sizeN - hold.limitN, hold, direction }];
      });
    }),
  );

/** Where along the piece the imbalance first passes what would hold it, m. */
const passedAt = ({ piece: { start, end }, hold, direction }: Excess): number => {
  const [fromN, toN] = [worstAt(start, direction), worstAt(end, direction)];
  if (!isAbove(hold.limitN, fromN)) return start.heightM;
  const share = (hold.limitN - fromN) / (toN - fromN);
  return start.heightM + share * (end.heightM - start.heightM);
};

const holdBreaches = (scene: Scene, pieces: readonly Piece[], toM: number): readonly Breach[] => {
  const lockN = lockUnderWayN(scene);
  const excesses = excessesOf(pieces, (middleM, direction) =>
    movingHold(scene.standing, middleM, direction, lockN),
  );
  const [first] = excesses;
  if (first === undefined) return [];
  const passesM = passedAt(first);
  const atContact = first.piece.startsAtContact && passesM === first.piece.start.heightM;
  const rule = atContact ? 'ORD-010' : 'ORD-008';
  return gravest(
    excesses.map((excess) =>
      unheld(scene, rule, excess, {
        heightM: excess.end.heightM,
        facts: wayFacts(scene, toM, passesM),
      }),
    ),
  );
};

const wayFacts = ({ standing }: Scene, toM: number, passesM: number): Finding['facts'] => ({
  from: measure(standing.height, 'length'),
  to: measure(toM, 'length'),
  passes: measure(passesM, 'length'),
});

/**
 * Hands must start, steady and stop the set everywhere on the way. An imbalance against the way
 * they pull is overcome together with friction; one that goes their way is held back, and friction,
 * which would help, is not counted on. Speed is not modelled.
 */
const handBreaches = (
  scene: Scene,
  pieces: readonly Piece[],
  { items, to }: { readonly items: Scene['standing']['items']; readonly to: number },
): readonly Breach[] => {
  const { physics, standing } = scene;
  const frictionN = physics.frictionN(items);
  const isOut = to > standing.height;
  // A batten that is heavy works against going out, and the other way round.
  const againstN = (direction: Direction): number =>
    (direction === 'in') === isOut ? frictionN : 0;
  const excesses = excessesOf(pieces, (middleM, direction) => {
    const haul = haulOf(physics, standing, middleM, direction);
    return { ...haul, limitN: haul.limitN - againstN(direction) };
  });
  return gravest(
    excesses.map((excess) =>
      unheld(scene, 'ORD-009', excess, {
        heightM: excess.end.heightM,
        limit: measure(excess.hold.limitN + againstN(excess.direction), 'force'),
        facts: {
          ...wayFacts(scene, to, passedAt(excess)),
          friction: measure(againstN(excess.direction), 'force'),
        },
      }),
    ),
  );
};

/**
 * What comes to stand on the stop if the lock slips all the way, signed as the imbalance there.
 * Null on that stop itself, and where the set arrives with nothing left that presses on it.
 */
export const slipEnd = (
  scene: Scene,
  direction: Direction,
): { readonly heightM: number; readonly imbalanceN: number } | null => {
  const { physics, standing } = scene;
  const stopM = direction === 'in' ? physics.lowStop.heightM : physics.highStop.heightM;
  if (isSameHeight(stopM, standing.height)) return null;
  const items = phasesMoving(physics, standing, stopM);
  const last = piecesOf(scene, items, stopM).at(-1);
  const sizeN = last === undefined ? 0 : worstAt(last.end, direction);
  if (!isAbove(sizeN, 0)) return null;
  return { heightM: stopM, imbalanceN: direction === 'in' ? sizeN : -sizeN };
};
