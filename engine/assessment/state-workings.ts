/** The working of one state of a set, for the line and the place that are worst in it. */
import type { BattenSolution } from '#beam';
import { measure, type Working } from '#findings';
import type { LineSet } from '#house';
import type { LineState, StructureState } from './structure-types.ts';
import {
  heldAgainst,
  knownTerm,
  limitOf,
  type StructureCase,
  sourceOf,
  term,
} from './working-terms.ts';

export const stateWorkings = (
  the: StructureCase,
  state: StructureState,
  beam: BattenSolution,
): readonly Working[] => [
  massWorking(the, state),
  sumWorking(the, state),
  ...lineWorkings(the, state),
  ...bendingWorkings(the, beam),
];

const massWorking = ({ lineSet }: StructureCase, { loads, mass }: StructureState): Working => {
  const sums = new Map<string, number>();
  for (const { of, load } of loads) {
    if (!of.startsWith(FITTINGS)) sums.set(of, (sums.get(of) ?? 0) + load.mass);
  }
  const items = [...sums].map(([of, massKg], index) =>
    term(`m_${index + 1}`, `${of}, as carried here`, measure(massKg, 'mass')),
  );
  return {
    title: 'Mass on the lines',
    formula: ['B', ...items.map(({ symbol }) => symbol)].join(' + '),
    terms: [knownTerm('B', 'batten with all its fittings', lineSet.batten.mass, 'mass'), ...items],
    result: term('m', 'batten and all that it carries', measure(mass, 'mass')),
    limit: limitOfLive(lineSet),
    source: 'sum of the take-off, with what the deck leaves to the batten at this height',
  };
};

/** What `structure` calls the loads that belong to the batten. */
const FITTINGS = 'fittings at line';

/** The live limit is of what hangs; the batten's own mass comes on top. */
const limitOfLive = ({ liveLimit, batten }: LineSet): Working['limit'] =>
  liveLimit.known && batten.mass.known
    ? {
        value: measure(liveLimit.value + batten.mass.value, 'mass'),
        source: `live limit, and the pipe with its fittings: ${sourceOf(liveLimit) ?? 'house'}`,
      }
    : null;

const sumWorking = ({ structure }: StructureCase, { lines, mass }: StructureState): Working => {
  const sumN = lines.reduce((sum, { tension }) => sum + tension, 0);
  return {
    title: 'All lines together, at the batten',
    formula: 'g · m',
    terms: [term('m', 'batten and all that it carries', measure(mass, 'mass'))],
    result: term('T_all', `sum of ${structure.lines.length} tensions`, measure(sumN, 'force')),
    limit: null,
    source: 'equilibrium; the tensions one by one come from the beam on its lines (the model)',
  };
};

type Worst = { readonly line: LineState; readonly number: number; readonly topN: number };

/** The line that carries most at its loft block with every mass at its worst. */
const worstLineOf = ({ lines }: StructureState): Worst | null =>
  lines.reduce<Worst | null>((worst, line, index) => {
    if (!line.top.known) return worst;
    const topN = line.top.value + (line.uncertainty ?? 0);
    return worst === null || topN > worst.topN ? { line, number: index + 1, topN } : worst;
  }, null);

const lineWorkings = (the: StructureCase, state: StructureState): readonly Working[] => {
  const worst = worstLineOf(state);
  if (worst === null) return [];
  return [
    tensionWorking(the, worst),
    ...strengthWorkings(the, worst),
    ...loftBlockWorkings(the, worst),
  ];
};

const tensionWorking = ({ lineSet }: StructureCase, { line, number, topN }: Worst): Working => {
  const wireN = (line.top.known ? line.top.value : line.tension) - line.tension;
  const isUnsaid = line.uncertainty === null;
  const doubt = isUnsaid
    ? []
    : [
        term(
          't',
          'doubt: g · sum of | share of the line in each mass | · its tolerance',
          measure(line.uncertainty, 'force'),
        ),
      ];
  return {
    title: `Tension of line ${number}, the most loaded, at its loft block`,
    formula: isUnsaid ? 'T + w' : 'T + w + t',
    terms: [
      term('T', 'at the batten, from the beam on its lines', measure(line.tension, 'force')),
      term('w', 'the wire below the loft block', measure(wireN, 'force')),
      ...doubt,
    ],
    result: term('T_L', 'tension at the loft block', measure(topN, 'force')),
    limit: limitOf(lineSet.lineLimit, 'force'),
    source: 'equilibrium of the wire; superposition for the doubt',
    omits: heldAgainst(
      lineSet.lineLimit,
      'the limit of a line',
      isUnsaid
        ? 'the tolerance of a mass that nobody has given, and starts and stops: both add to it'
        : 'starts and stops, which add to it',
    ),
  };
};

const strengthWorkings = (
  { house }: StructureCase,
  { line, number }: Worst,
): readonly Working[] => {
  const { lineDesignFactor } = house.rules;
  if (!line.strength.known || !lineDesignFactor.known) return [];
  const { breaking, termination, bending, factor } = line.strength.value;
  if (factor === null) return [];
  const leftN = breaking * termination.value * bending.value;
  const mostN = leftN / factor + (line.uncertainty ?? 0);
  return [
    {
      title: `Strength that line ${number} needs`,
      formula: `${lineDesignFactor.value} · T_m / ( e · b )`,
      terms: [
        term(
          'T_m',
          'largest tension anywhere along the line, doubt counted in',
          measure(mostN, 'force'),
        ),
        term(
          'e',
          'left of the strength by its ends',
          measure(termination.value, 'ratio'),
          termination.source,
        ),
        term(
          'b',
          'left of the strength by its sheaves',
          measure(bending.value, 'ratio'),
          bending.source,
        ),
      ],
      result: term(
        'F_need',
        'breaking strength asked for',
        measure((lineDesignFactor.value * breaking * mostN) / leftN, 'force'),
      ),
      limit: {
        value: measure(breaking, 'force'),
        source: 'breaking strength in the catalogue',
      },
      source: `definition of a design factor; factor: ${sourceOf(lineDesignFactor) ?? 'house'}`,
      omits:
        'wear, rust and broken wires, which leave less. Efficiencies multiplied: errs to the ' +
        'careful side, since the end of a line does not run over a sheave',
    },
  ];
};

const loftBlockWorkings = (
  { lineSet }: StructureCase,
  { line, number, topN }: Worst,
): readonly Working[] => {
  if (!line.loftBlock.known) return [];
  const { turn } = line.loftBlock.value;
  return [
    {
      title: `Force on the loft block of line ${number}`,
      formula: '2 · T_L · sin( a / 2 )',
      terms: [
        term('T_L', 'tension at the loft block', measure(topN, 'force')),
        term('a', 'through which the line turns', measure(turn, 'angle')),
      ],
      result: term('R', 'on the block', measure(2 * topN * Math.sin(turn / 2), 'force')),
      limit: limitOf(lineSet.lift.loftBlock.rated, 'force'),
      source: 'equilibrium of the sheave',
      omits: heldAgainst(
        lineSet.lift.loftBlock.rated,
        'the rating of the loft blocks',
        'friction of the sheave, a part in fifty either way; starts and stops',
      ),
    },
  ];
};

const bendingWorkings = (the: StructureCase, beam: BattenSolution): readonly Working[] => [
  ...stressWorkings(the, beam),
  ...useWorkings(the, beam),
];

const stressWorkings = (
  { lineSet, structure }: StructureCase,
  { moment, stress }: BattenSolution,
): readonly Working[] => {
  if (stress === null) return [];
  const { sectionModulus, yieldStrength } = lineSet.batten.pipe;
  const peakNm = Math.max(moment.max.value, -moment.min.value);
  const wall = structure.wall === null ? 'wall not said' : `values of the ${structure.wall} wall`;
  return [
    {
      title: 'Bending stress, largest',
      formula: 'M / S',
      terms: [
        term('M', 'largest bending moment, of either sign', measure(peakNm, 'moment')),
        knownTerm('S', 'elastic section modulus', sectionModulus, 'sectionModulus'),
      ],
      result: term('f_b', 'at the outside of the pipe', measure(stress, 'pressure')),
      limit: limitOf(yieldStrength, 'pressure'),
      source: `bending of a beam; ${wall}. The limit here is yield; the check is the use below`,
    },
  ];
};

const useWorkings = (
  { structure }: StructureCase,
  { allowable, utilisation }: BattenSolution,
): readonly Working[] => {
  if (allowable === null || utilisation === null) return [];
  const { value, allowed, atSplice } = utilisation;
  const share = atSplice ? 'share that the joint takes' : 'share that a joint takes: none here';
  const rest = 'tolerances of the masses, starts and stops: they add to it';
  return [
    {
      title: atSplice ? 'Use of the pipe, at a joint' : 'Use of the pipe',
      formula: 'M_u / ( s · M_a )',
      terms: [
        term('M_u', 'moment where the pipe is used most', measure(value * allowed, 'moment')),
        term('s', share, measure(allowed / allowable.moment, 'ratio')),
        term('M_a', 'allowed for the whole pipe', measure(allowable.moment, 'moment')),
      ],
      result: term('u', 'use', measure(value, 'ratio')),
      limit: { value: measure(1, 'ratio'), source: 'all that is allowed' },
      source: 'definition; the moment from the beam on its lines',
      omits: structure.splicesKnown ? rest : `joints that nobody has looked at or tested; ${rest}`,
    },
  ];
};
