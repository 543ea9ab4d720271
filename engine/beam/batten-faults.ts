/** What keeps a batten from being reckoned at all: every fault at once, each with its place. */
import type { Refusal } from '#outcome';
import { refuse } from './refusal-codes.ts';
import type { BattenCase, HungPiece, Load, Pipe } from './types.ts';

/** Two lines nearer than this cannot be told apart by anybody who measures them. */
const ONE_PLACE_M = 1e-3;
const FARTHEST_M = 1000;

const isPlace = (n: number): boolean => Number.isFinite(n) && Math.abs(n) <= FARTHEST_M;
const isAboveZero = (n: number): boolean => Number.isFinite(n) && n > 0;

export const battenFaults = (the: BattenCase): readonly Refusal[] => {
  const { left, right, lines, loads, supports = [], splices = [], pieces = [] } = the;
  const ends = [...placeFault(left, 'left'), ...placeFault(right, 'right')];
  if (ends.length === 0 && left >= right) {
    ends.push(
      refuse('endsReversed', 'left', {
        found: `${left} m, with the right end at ${right} m`,
        accepted: 'a left end with the smaller x',
      }),
    );
  }
  if (ends.length > 0) return [...pipeFaults(the.pipe), ...ends];
  return [
    ...pipeFaults(the.pipe),
    ...(lines.length === 0
      ? [refuse('noLines', 'lines', { found: 'none', accepted: 'one lift line or more' })]
      : []),
    ...lines.flatMap((line, index) => tieFaults(the, line, `lines[${index}]`)),
    ...apartFaults(lines, 'lines'),
    ...supports.flatMap((support, index) => [
      ...tieFaults(the, support, `supports[${index}]`),
      ...placeFault(support.height, `supports[${index}].height`),
    ]),
    ...splices.flatMap((splice, index) => [
      ...onBattenFault(the, splice.x, `splices[${index}].x`),
      ...strengthFault(splice.strength, `splices[${index}].strength`),
    ]),
    ...loads.flatMap((load, index) => loadFaults(the, load, `loads[${index}]`)),
    ...pieces.flatMap((piece, index) => pieceFaults(the, piece, `pieces[${index}]`)),
  ];
};

type Ends = { readonly left: number; readonly right: number };

const pipeFaults = (pipe: Pipe): readonly Refusal[] => {
  const { massPerLength, ...strengths } = pipe;
  return [
    ...massFault(massPerLength, 'pipe.massPerLength'),
    ...Object.entries(strengths).flatMap(([name, value]) =>
      value === undefined || isAboveZero(value)
        ? []
        : [
            refuse('notPipe', `pipe.${name}`, {
              found: String(value),
              accepted: 'a finite number above zero',
            }),
          ],
    ),
  ];
};

const placeFault = (n: number, path: string): Refusal[] =>
  isPlace(n)
    ? []
    : [
        refuse('notNumber', path, {
          found: String(n),
          accepted: `a number of metres, no more than ${FARTHEST_M} either way`,
        }),
      ];

const massFault = (n: number, path: string): readonly Refusal[] =>
  Number.isFinite(n) && n >= 0
    ? []
    : [refuse('notMass', path, { found: String(n), accepted: 'a finite mass, 0 or more' })];

const onBattenFault = ({ left, right }: Ends, x: number, path: string): readonly Refusal[] => {
  const fault = placeFault(x, path);
  if (fault.length > 0 || (x >= left && x <= right)) return fault;
  return [
    refuse('lineOffBatten', path, {
      found: `${x} m, on a batten from ${left} to ${right} m`,
      accepted: 'a place on the batten',
    }),
  ];
};

type Springy = { readonly x: number; readonly stiffness: number | null; readonly trim?: number };

const tieFaults = (ends: Ends, { x, stiffness, trim = 0 }: Springy, path: string): Refusal[] => [
  ...onBattenFault(ends, x, `${path}.x`),
  ...placeFault(trim, `${path}.trim`),
  ...(stiffness === null || isAboveZero(stiffness)
    ? []
    : [
        refuse('notStiff', `${path}.stiffness`, {
          found: String(stiffness),
          accepted: 'newtons for each metre above zero, or null where it does not stretch',
        }),
      ]),
];

const apartFaults = (places: readonly { readonly x: number }[], path: string): Refusal[] => {
  const ordered = places
    .map(({ x }, index) => ({ x, index }))
    .toSorted((one, other) => one.x - other.x);
  return ordered.flatMap(({ x, index }, at) => {
    const before = ordered[at - 1];
    if (before === undefined || !(x - before.x < ONE_PLACE_M)) return [];
    return [
      refuse('onePlace', `${path}[${index}].x`, {
        found: `${x} m, where ${path}[${before.index}] is`,
        accepted: 'places a millimetre apart or more',
      }),
    ];
  });
};

const strengthFault = (share: number, path: string): readonly Refusal[] =>
  share > 0 && share <= 1
    ? []
    : [
        refuse('spliceStrength', path, {
          found: String(share),
          accepted: 'a share above 0 and up to 1',
        }),
      ];

const loadFaults = (ends: Ends, load: Load, path: string): readonly Refusal[] => {
  const mass = massFault(load.mass, `${path}.mass`);
  if ('x' in load) return [...mass, ...loadPlaceFault(ends, load.x, `${path}.x`)];
  const from = loadPlaceFault(ends, load.from, `${path}.from`);
  const to = loadPlaceFault(ends, load.to, `${path}.to`);
  if (from.length + to.length > 0 || load.from <= load.to) return [...mass, ...from, ...to];
  return [
    ...mass,
    refuse('loadOffBatten', `${path}.from`, {
      found: `${load.from} m, with its other end at ${load.to} m`,
      accepted: 'a spread load from its left end to its right',
    }),
  ];
};

const loadPlaceFault = ({ left, right }: Ends, x: number, path: string): readonly Refusal[] => {
  const fault = placeFault(x, path);
  if (fault.length > 0 || (x >= left && x <= right)) return fault;
  return [
    refuse('loadOffBatten', path, {
      found: `${x} m, on a batten from ${left} to ${right} m`,
      accepted: 'a load between the ends',
    }),
  ];
};

/** What hangs on a piece may reach beyond the batten; its picks may not. */
const pieceFaults = (ends: Ends, piece: HungPiece, path: string): readonly Refusal[] => [
  ...(piece.picks.length >= 2
    ? []
    : [
        refuse('onePick', `${path}.picks`, {
          found: String(piece.picks.length),
          accepted: 'two picks or more; a piece on one pick is a point load',
        }),
      ]),
  ...piece.picks.flatMap((pick, index) => tieFaults(ends, pick, `${path}.picks[${index}]`)),
  ...apartFaults(piece.picks, `${path}.picks`),
  ...piece.loads.flatMap((load, index) =>
    loadFaults({ left: -FARTHEST_M, right: FARTHEST_M }, load, `${path}.loads[${index}]`),
  ),
  ...(piece.bendingStiffness === null || isAboveZero(piece.bendingStiffness)
    ? []
    : [
        refuse('notStiff', `${path}.bendingStiffness`, {
          found: String(piece.bendingStiffness),
          accepted: 'N·m² above zero, or null where the piece does not bend',
        }),
      ]),
];
