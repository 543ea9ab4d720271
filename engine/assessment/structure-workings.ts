/** Workings of what a set's batten, lines and blocks carry, from the numbers already reckoned. */
import { measure, type Working } from '#findings';
import type { House } from '#house';
import { GRAVITY } from '#quantities';
import { plantWorkings } from './plant-workings.ts';
import { stateWorkings } from './state-workings.ts';
import type { SetStructure, StructureState } from './structure-types.ts';
import type { SetAssessment } from './types.ts';
import { heldAgainst, limitOf, type StructureCase, term } from './working-terms.ts';

export type StructureWorkings = {
  /** What is the same in every state. */
  readonly plant: readonly Working[];
  /** Of each stable state, for the line and the place that are worst in it. */
  readonly states: readonly {
    readonly state: StructureState;
    readonly workings: readonly Working[];
  }[];
  /** Head block, and the batten held down. */
  readonly whole: readonly Working[];
};

/**
 * The working of every result of a set's structure: symbols, values, result, limit and source, and
 * what is left out. Nothing where the structure is not known; it then says itself what it needs.
 *
 * Signs are Latin letters: the face that the sheets are printed in has no Greek ones.
 *
 * Source  the doc block of each formula; calculations.md sections 2 and 3
 */
export const structureWorkingsOf = (set: SetAssessment, house: House): StructureWorkings => {
  if (!set.structure.known) return { plant: [], states: [], whole: [] };
  const structure = set.structure.value;
  const the = { lineSet: set.lineSet, house, structure, arborKg: arborOf(set) };
  return {
    plant: plantWorkings(the),
    states: structure.states.flatMap((state) =>
      'unstable' in state.beam ? [] : [{ state, workings: stateWorkings(the, state, state.beam) }],
    ),
    whole: [...headBlockWorkings(the), ...heldDownWorkings(the)],
  };
};

/** As `structure` takes it: planned, or pipe weight only where nothing hangs. */
const arborOf = ({ plan, bare, hang }: SetAssessment): number | null => {
  if (plan.known) return plan.value.stack.arborMass;
  return hang === null && bare.known ? bare.value.set.carriage + bare.value.set.bricks : null;
};

const headBlockWorkings = ({ lineSet, structure }: StructureCase): readonly Working[] => {
  const { headBlock } = structure;
  if (!headBlock.known) return [];
  const { resultant, horizontal, vertical } = headBlock.value;
  return [
    {
      title: 'Force on the head block, batten at its heaviest',
      formula: 'sqrt( V · V + H · H )',
      terms: [
        term('V', 'down: all lines, and the hand line', measure(vertical, 'force')),
        term('H', 'towards the loft blocks', measure(horizontal, 'force')),
      ],
      result: term('R', 'on the block', measure(resultant, 'force')),
      limit: limitOf(lineSet.lift.headBlock.rated, 'force'),
      source: 'equilibrium of the sheave: each line pulls down and along its run',
      omits: heldAgainst(
        lineSet.lift.headBlock.rated,
        'the rating of the head block',
        'a pull on the hand line and the weight of the block, which add to it',
      ),
    },
  ];
};

const heldDownWorkings = ({ lineSet, structure, arborKg }: StructureCase): readonly Working[] => {
  const { restrained, lines } = structure;
  if (!restrained.known || arborKg === null || lines.length === 0) return [];
  const { arborSide, battenSide } = restrained.value;
  const isDouble = lineSet.suspension === 'doublePurchase';
  const wireKg = arborSide / GRAVITY - arborKg / (isDouble ? 2 : 1);
  return [
    {
      title: 'All lines together, batten held down',
      formula: isDouble ? 'g · ( A / 2 + W )' : 'g · ( A + W )',
      terms: [
        term('A', 'whole arbor as planned', measure(arborKg, 'mass')),
        term('W', 'wire on the side of the arbor', measure(wireKg, 'mass')),
      ],
      result: term('P', 'pull of the arbor', measure(arborSide, 'force')),
      limit: null,
      source: 'equilibrium of the side that hangs',
      omits: 'whatever holds the batten: a bull line or a capstan adds its own pull',
    },
    {
      title: 'All lines together, arbor held',
      formula: 'g · ( m + W )',
      terms: [
        term('m', 'batten and all that it carries', measure(heaviestKg(structure), 'mass')),
        term(
          'W',
          'wire on the side of the batten, up to the head block',
          measure(battenSide / GRAVITY - heaviestKg(structure), 'mass'),
        ),
      ],
      result: term('Q', 'pull of the batten', measure(battenSide, 'force')),
      limit: null,
      source: 'equilibrium of the side that hangs',
    },
    {
      title: 'Equal share of a line, batten held down',
      formula: 'P / n',
      terms: [
        term('P', 'pull of the arbor', measure(arborSide, 'force')),
        term('n', 'lift lines', measure(lines.length, 'count')),
      ],
      result: term('T', 'equal share', measure(arborSide / lines.length, 'force')),
      limit: limitOf(lineSet.lineLimit, 'force'),
      source: 'definition',
      omits: heldAgainst(
        lineSet.lineLimit,
        'the limit of a line',
        'how the batten shares it out: some line always carries more',
      ),
    },
  ];
};

const heaviestKg = ({ states }: SetStructure): number =>
  states.reduce((most, { beam, mass }) => ('unstable' in beam ? most : Math.max(most, mass)), 0);
