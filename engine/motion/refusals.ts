/** What the numbers of one set say of one another, where each is right by itself. */
import type { Refusal } from '#outcome';
import { GRAVITY } from '#quantities';
import { isSameHeight, sidesAt } from './broken-line.ts';
import { refuse } from './refusal-codes.ts';
import type { RunawayCase } from './runaway.ts';
import type { BrokenLine, Moving, Travel } from './types.ts';

/** Heights typed in feet and rounded when they became metres. */
const ROUNDING_M = 1e-3;

/** Of a mass or force that was rounded before it came here: 1 in 1000, and 50 g. */
const ROUNDING_SHARE = 1e-3;
const ROUNDING_KG = 0.05;

export const travelRefusals = (travel: Travel): readonly Refusal[] => [
  ...lineRefusals(travel.curve, 'curve', travel),
  ...travel.curve.flatMap(({ contact }, index) =>
    contact === undefined || contact.low <= contact.high
      ? []
      : [
          refuse('contactReversed', `curve[${index}].contact.low`, {
            found: `${contact.low} N, with high ${contact.high} N`,
            accepted: 'a lower value that is not above the higher one',
          }),
        ],
  ),
];

export const runawayRefusals = (the: Omit<RunawayCase, 'hold'>): readonly Refusal[] => {
  const { hanging } = the.moves;
  const refusals = [
    ...travelRefusals(the),
    ...(typeof hanging === 'number' ? [] : lineRefusals(hanging, 'moves.hanging', the)),
  ];
  // What the two lines say of one another is asked where each is a line.
  return refusals.length > 0 ? refusals : [...jumpRefusals(the), ...weightRefusals(the)];
};

const lineRefusals = (
  line: BrokenLine,
  path: string,
  { lowStop, highStop }: Omit<Travel, 'curve'>,
): readonly Refusal[] => {
  const disordered = line.flatMap(({ height }, index) => {
    const before = line[index - 1];
    if (before === undefined || height - before.height >= ROUNDING_M) return [];
    return [
      refuse('nodesDisordered', `${path}[${index}].height`, {
        found: `${height} m after ${before.height} m`,
        accepted: 'heights that go upward, a millimetre apart or more',
      }),
    ];
  });
  if (disordered.length > 0) return disordered;
  const [first, last] = [line[0]?.height, line.at(-1)?.height];
  const reaches =
    first !== undefined &&
    last !== undefined &&
    first <= lowStop + ROUNDING_M &&
    last >= highStop - ROUNDING_M;
  if (reaches) return [];
  return [
    refuse('travelUncovered', path, {
      found: first === undefined ? 'no node' : `nodes from ${first} m to ${last} m`,
      accepted: `nodes from ${lowStop} m to ${highStop} m or beyond, both stops among them`,
    }),
  ];
};

const jumpRefusals = ({ curve, moves }: Omit<RunawayCase, 'hold'>): readonly Refusal[] => {
  const { hanging } = moves;
  const line: BrokenLine =
    typeof hanging === 'number' ? [{ height: 0, below: hanging, above: hanging }] : hanging;
  const heights = [...curve, ...line].map(({ height }) => height);
  const apart = heights.filter(
    (heightM, index) => heights.findIndex((one) => isSameHeight(one, heightM)) === index,
  );
  return apart.flatMap((heightM) => {
    const [force, mass] = [sidesAt(curve, heightM), sidesAt(line, heightM)];
    const forceKg = (force.above - force.below) / GRAVITY;
    const jumpKg = mass.above - mass.below;
    const roomKg = ROUNDING_KG + ROUNDING_SHARE * Math.max(mass.above, mass.below);
    if (Math.abs(forceKg - jumpKg) <= roomKg) return [];
    return [
      refuse('jumpUnlike', 'moves.hanging', {
        found: `${toGrams(jumpKg)} kg at ${heightM} m, ${toGrams(forceKg)} kg by the curve`,
        accepted: 'the mass on the batten along the travel, with the jumps of the curve',
      }),
    ];
  });
};

const toGrams = (kg: number): number => Math.round(kg * 1000) / 1000;

const weightRefusals = ({ curve, moves }: Omit<RunawayCase, 'hold'>): readonly Refusal[] =>
  curve.flatMap(({ height, below, above }, index) => {
    const { batten, arbor } = sideWeights(moves, height);
    const [most, least] = [Math.max(below, above), Math.min(below, above)];
    return [
      ...(most <= batten ? [] : [tooLarge(index, most, batten, 'the batten side')]),
      ...(-least <= arbor ? [] : [tooLarge(index, -least, arbor, 'the arbor')]),
    ];
  });

/** The lines themselves pull on either side, by no more than all of them weigh. */
const sideWeights = (
  { hanging, arbor, purchase, lineMass }: Moving,
  heightM: number,
): { readonly batten: number; readonly arbor: number } => {
  const hangsKg = typeof hanging === 'number' ? hanging : sidesAt(hanging, heightM).above;
  const weight = (kg: number): number =>
    (1 + ROUNDING_SHARE) * GRAVITY * (kg + lineMass + ROUNDING_KG);
  return { batten: weight(hangsKg), arbor: weight(arbor / purchase) };
};

const tooLarge = (index: number, foundN: number, mostN: number, side: string): Refusal =>
  refuse('moreThanHangs', `curve[${index}]`, {
    found: `${Math.round(foundN)} N towards ${side}`,
    accepted: `no more than ${side} weighs with the lines, ${Math.round(mostN)} N`,
  });
