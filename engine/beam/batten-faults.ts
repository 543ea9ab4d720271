/** What keeps a batten from being reckoned at all: every fault at once, each with its place. */
import type { Refusal } from '#outcome';
import { type BeamRefusal, refuse } from './refusal-codes.ts';
import type { BattenCase, HungPiece, Load, Pipe } from './types.ts';

/** Two lines nearer than this cannot be told apart by anybody who measures them. */
const ONE_PLACE_M = 1e-3;
const FARTHEST_M = 1000;
/** A place at the very end, reckoned in feet and rounded twice, may come out a hair beyond it. */
const HAIR_M = 1e-9;

const isPlace = (n: number): boolean => Number.isFinite(n) && Math.abs(n) <= FARTHEST_M;
const isAboveZero = (n: number): boolean => Number.isFinite(n) && n > 0;

/** Where a fault lies, told only when there is one: most battens have none. */
type Path = () => string;
type Take = (fault: Refusal) => void;

export const battenFaults = (the: BattenCase): readonly Refusal[] => {
  const { left, right, lines, loads, supports = [], splices = [], pieces = [] } = the;
  const faults: Refusal[] = [];
  const take: Take = (fault) => void faults.push(fault);
  pipeFaults(the.pipe, take);
  if (!endFaults(left, right, take)) return faults;
  if (lines.length === 0) {
    take(refuse('noLines', 'lines', { found: 'none', accepted: 'one lift line or more' }));
  }
  for (const [index, line] of lines.entries()) {
    tieFaults(the, line, { path: () => `lines[${index}]`, take });
  }
  apartFaults(lines, 'lines', take);
  for (const [index, support] of supports.entries()) {
    tieFaults(the, support, { path: () => `supports[${index}]`, take });
    placeFault(support.height, 'height', { path: () => `supports[${index}]`, take });
  }
  for (const [index, splice] of splices.entries()) {
    const spot = { path: () => `splices[${index}]`, take };
    onBattenFault(the, splice.x, spot);
    strengthFault(splice.strength, spot);
  }
  for (const [index, load] of loads.entries()) {
    loadFaults(the, load, { path: () => `loads[${index}]`, take });
  }
  for (const [index, piece] of pieces.entries()) {
    pieceFaults(the, piece, { path: () => `pieces[${index}]`, take });
  }
  return faults;
};

type Ends = { readonly left: number; readonly right: number };

const isOn = ({ left, right }: Ends, x: number): boolean =>
  x >= left - HAIR_M && x <= right + HAIR_M;

type Spot = { readonly path: Path; readonly take: Take };

type Words = { readonly found: string; readonly accepted: string };

const tell = (name: BeamRefusal, field: string, { path, take }: Spot, words: Words): void => {
  const around = path();
  take(refuse(name, around === '' ? field : `${around}.${field}`, words));
};

const TOP: Path = () => '';

const endFaults = (left: number, right: number, take: Take): boolean => {
  const spot = { path: TOP, take };
  const isLeft = placeFault(left, 'left', spot);
  const isRight = placeFault(right, 'right', spot);
  if (!isLeft || !isRight || left < right) return isLeft && isRight;
  tell('endsReversed', 'left', spot, {
    found: `${left} m, with the right end at ${right} m`,
    accepted: 'a left end with the smaller x',
  });
  return false;
};

const STRENGTHS = [
  'secondMoment',
  'elasticModulus',
  'sectionModulus',
  'plasticModulus',
  'yieldStrength',
] as const;

const pipeFaults = (pipe: Pipe, take: Take): void => {
  const spot = { path: () => 'pipe', take };
  massFault(pipe.massPerLength, 'massPerLength', spot);
  for (const name of STRENGTHS) {
    const value = pipe[name];
    if (value === undefined || isAboveZero(value)) continue;
    tell('notPipe', name, spot, {
      found: String(value),
      accepted: 'a finite number above zero',
    });
  }
};

/** Whether it is a place; a fault where it is none. */
const placeFault = (n: number, field: string, spot: Spot): boolean => {
  if (isPlace(n)) return true;
  tell('notNumber', field, spot, {
    found: String(n),
    accepted: `a number of metres, no more than ${FARTHEST_M} either way`,
  });
  return false;
};

const massFault = (n: number, field: string, spot: Spot): void => {
  if (Number.isFinite(n) && n >= 0) return;
  tell('notMass', field, spot, { found: String(n), accepted: 'a finite mass, 0 or more' });
};

const onBattenFault = (ends: Ends, x: number, spot: Spot): void => {
  if (isOn(ends, x) || !placeFault(x, 'x', spot)) return;
  tell('lineOffBatten', 'x', spot, {
    found: `${x} m, on a batten from ${ends.left} to ${ends.right} m`,
    accepted: 'a place on the batten',
  });
};

type Springy = { readonly x: number; readonly stiffness: number | null; readonly trim?: number };

const tieFaults = (ends: Ends, { x, stiffness, trim = 0 }: Springy, spot: Spot): void => {
  onBattenFault(ends, x, spot);
  placeFault(trim, 'trim', spot);
  if (stiffness === null || isAboveZero(stiffness)) return;
  tell('notStiff', 'stiffness', spot, {
    found: String(stiffness),
    accepted: 'newtons for each metre above zero, or null where it does not stretch',
  });
};

type Placed = { readonly x: number };

/** Lines are told in order more often than not, and then there is nothing to sort. */
const isInOrder = (places: readonly Placed[]): boolean =>
  places.every(({ x }, index) => index === 0 || x - (places[index - 1]?.x ?? x) >= ONE_PLACE_M);

const apartFaults = (places: readonly Placed[], path: string, take: Take): void => {
  if (isInOrder(places)) return;
  const ordered = places
    .map(({ x }, index) => ({ x, index }))
    .toSorted((one, other) => one.x - other.x);
  for (const [at, { x, index }] of ordered.entries()) {
    const before = ordered[at - 1];
    if (before === undefined || !(x - before.x < ONE_PLACE_M)) continue;
    take(
      refuse('onePlace', `${path}[${index}].x`, {
        found: `${x} m, where ${path}[${before.index}] is`,
        accepted: 'places a millimetre apart or more',
      }),
    );
  }
};

const strengthFault = (share: number, spot: Spot): void => {
  if (share > 0 && share <= 1) return;
  tell('spliceStrength', 'strength', spot, {
    found: String(share),
    accepted: 'a share above 0 and up to 1',
  });
};

const loadFaults = (ends: Ends, load: Load, spot: Spot): void => {
  massFault(load.mass, 'mass', spot);
  if ('x' in load) {
    loadPlaceFault(ends, load.x, 'x', spot);
    return;
  }
  const isFrom = loadPlaceFault(ends, load.from, 'from', spot);
  const isTo = loadPlaceFault(ends, load.to, 'to', spot);
  if (!isFrom || !isTo || load.from <= load.to) return;
  tell('loadOffBatten', 'from', spot, {
    found: `${load.from} m, with its other end at ${load.to} m`,
    accepted: 'a spread load from its left end to its right',
  });
};

const loadPlaceFault = (ends: Ends, x: number, field: string, spot: Spot): boolean => {
  if (isOn(ends, x)) return true;
  if (!placeFault(x, field, spot)) return false;
  tell('loadOffBatten', field, spot, {
    found: `${x} m, on a batten from ${ends.left} to ${ends.right} m`,
    accepted: 'a load between the ends',
  });
  return false;
};

/** What hangs on a piece may reach beyond the batten; its picks may not. */
const pieceFaults = (ends: Ends, piece: HungPiece, spot: Spot): void => {
  const { picks, loads, bendingStiffness } = piece;
  const { path, take } = spot;
  if (picks.length < 2) {
    tell('onePick', 'picks', spot, {
      found: String(picks.length),
      accepted: 'two picks or more; a piece on one pick is a point load',
    });
  }
  for (const [index, pick] of picks.entries()) {
    tieFaults(ends, pick, { path: () => `${path()}.picks[${index}]`, take });
  }
  apartFaults(picks, `${path()}.picks`, take);
  const anywhere = { left: -FARTHEST_M, right: FARTHEST_M };
  for (const [index, load] of loads.entries()) {
    loadFaults(anywhere, load, { path: () => `${path()}.loads[${index}]`, take });
  }
  if (bendingStiffness === null || isAboveZero(bendingStiffness)) return;
  tell('notStiff', 'bendingStiffness', spot, {
    found: String(bendingStiffness),
    accepted: 'N·m² above zero, or null where the piece does not bend',
  });
};
