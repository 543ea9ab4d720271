import type { SetStructure, StructureState } from '#assessment';
import { type Finding, measure } from '#findings';
import { acrossStage } from '../across-stage.ts';
import { sourceOf } from '../known-values.ts';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import { type StructuredCase, whenStructured } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { worstBy } from '../worst.ts';
import { type Solution, solvedStates } from './solved-states.ts';

/**
 * PIP-002 and PIP-003: nowhere along the batten does it bend by more than its pipe, or a joint of
 * it, is allowed; above nine tenths of that a person looks. The method and the wall are said,
 * since they differ by about a third. A strength that is not known is missed for the house.
 */
export const bending = whenStructured((the) => {
  const bent = bentStates(the.structure);
  const worst = worstBy(bent, ({ use }) => use.value);
  if (worst === undefined || !isAbove(worst.use.value, NEAR_LOAD)) return [];
  return [findingOf(the, worst, isAbove(worst.use.value, 1))];
});

type Allowable = NonNullable<Solution['allowable']>;
type Bent = {
  readonly state: StructureState;
  readonly allowable: Allowable;
  readonly use: NonNullable<Solution['utilisation']>;
};

const bentStates = (structure: SetStructure): readonly Bent[] =>
  solvedStates(structure).flatMap(({ state, solution: { allowable, utilisation } }) =>
    allowable === null || utilisation === null ? [] : [{ state, allowable, use: utilisation }],
  );

const METHODS: Readonly<Record<Allowable['method'], string>> = {
  plastic: 'plastic moment',
  firstYield: 'moment at first yield',
};

const WALLS = { nominal: 'nominal wall', design: 'design wall' } as const;

const findingOf = (
  { set: { lineSet }, structure }: StructuredCase,
  { state, allowable, use }: Bent,
  isOver: boolean,
): Finding => {
  const wall = structure.wall === null ? 'wall not said' : WALLS[structure.wall];
  const method = `${METHODS[allowable.method]} over ${allowable.factor}, ${wall}`;
  const { yieldStrength } = lineSet.batten.pipe;
  const source = yieldStrength.known ? `${method}; ${sourceOf(yieldStrength)}` : method;
  const momentNm = use.value * use.allowed;
  const limit = measure(isOver ? use.allowed : NEAR_LOAD * use.allowed, 'moment');
  const limitSource = isOver ? source : '90 % of it: common practice, no source';
  return raise(isOver ? 'PIP-002' : 'PIP-003', {
    at: { set: lineSet.id, heightM: state.height },
    measured: measure(momentNm, 'moment'),
    limit,
    limitSource,
    facts: {
      where: use.atSplice ? 'at a joint of the pipe' : 'in the pipe',
      ...acrossStage(use.x),
      state: state.name,
      height: measure(state.height, 'length'),
      full: measure(use.allowed, 'moment'),
      method,
    },
    working: workedOut(
      'bending of the batten against what it may take',
      'M / ( s · M_a )',
      [
        term('M', 'bending moment, from the beam on its lines', momentNm, 'moment'),
        term('s', 'share that the joint takes', use.allowed / allowable.moment, 'ratio'),
        term('M_a', method, allowable.moment, 'moment', source),
      ],
      term('u', 'use of the pipe', use.value, 'ratio'),
      {
        source: 'trade formula C32',
        limit: { value: measure(isOver ? 1 : NEAR_LOAD, 'ratio'), source: limitSource },
        omits:
          'tolerances of the masses, starts and stops, clamps and holes: each leaves less to spare',
      },
    ),
  });
};
