/**
 * Assessments written by hand for the tests of the rules, and the judging of them. No calculator
 * is opened: a test says what the numbers are, so that it can put them on either side of a limit.
 */
import type { Assessment, HouseTotals, PlannedStack, SetAssessment, SetPlan } from '#assessment';
import { blocked, type Finding, reckoned } from '#findings';
import type { House, LineSet } from '#house';
import { assert } from '#outcome';
import { kilograms, metres, newtons } from '#quantities';
import type { Cue, Hang } from '#show';
import type { HouseState, SetState } from '#state';
import { type RuleCode, ruleOf } from './declared.ts';
import { exampleHang, exampleHouse, exampleSet, showOf, stateOf } from './example-house.ts';
import { noTotals, structureOf } from './example-structure.ts';
import { judge } from './judge.ts';

/** Height in m, U under it and over it in N, and what U may be off by. */
export type Node = readonly [heightM: number, belowN: number, aboveN?: number, toleranceN?: number];

export const curveOf = (nodes: readonly Node[]): SetPlan['curve'] => ({
  nodes: nodes.map(([heightM, belowN, aboveN = belowN, toleranceN = 20]) => ({
    height: metres(heightM),
    below: newtons(belowN),
    above: newtons(aboveN),
    contact: { low: newtons(Math.min(belowN, aboveN)), high: newtons(Math.max(belowN, aboveN)) },
    uncertainty: newtons(toleranceN),
  })),
  jumps: [],
  equilibria: [],
});

/** From 40 N batten heavy on the low stop to 60 N arbor heavy on the high stop. */
export const plainNodes: readonly Node[] = [
  [1, 40],
  [19, -60],
];

export const exampleStack: PlannedStack = {
  show: [{ kind: 'B', count: 10 }],
  chosenBy: 'person',
  reason: 'as weighed',
  runs: [
    { kind: 'B', count: 1, tag: 'pipe' },
    { kind: 'B', count: 10, tag: 'show' },
  ],
  spreaders: 0,
  plates: 11,
  height: metres(0.33),
  brickThickness: metres(0.33),
  showMass: kilograms(100),
  pipeMass: kilograms(10),
  arborMass: kilograms(150),
};

export const balanceSet: SetPlan['set'] = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0.16,
  batten: 50,
  carriage: 40,
  bricks: 110,
  lowStop: 1,
  highStop: 19,
  arborTopAtLow: 20.3,
  wireEndAbove: 0.6,
  items: [{ kind: 'clear', mass: 100, uncertainty: 2 }],
  battenUncertainty: 1,
  carriageUncertainty: 1,
  brickUncertainty: 2.2,
};

export type Trimmed = readonly [heightM: number, imbalanceN: number, belowN?: number];

export const trimOf = (
  trim: Hang['trims'][number],
  [heightM, imbalanceN, belowN = imbalanceN]: Trimmed,
): SetPlan['trims'][number] => ({
  trim,
  height: metres(heightM),
  imbalance: newtons(imbalanceN),
  below: newtons(belowN),
  uncertainty: newtons(20),
});

export const extremes = (leastN: number, mostN: number): SetPlan['freeExtremes'] => ({
  least: { height: metres(19), imbalance: newtons(leastN) },
  most: { height: metres(1.2), imbalance: newtons(mostN) },
});

export const planOf = (changes: Partial<SetPlan> = {}, hang = exampleHang): SetPlan => ({
  stack: exampleStack,
  set: balanceSet,
  curve: curveOf(plainNodes),
  after: [],
  doubtsUnsaid: [],
  liftOff: null,
  freeRange: { from: metres(1.2), to: metres(10) },
  freeExtremes: extremes(-10, 39),
  travelExtremes: extremes(-60, 40),
  trims: hang.trims.map((trim) => trimOf(trim, [10, -10])),
  working: { height: metres(1.2), imbalance: newtons(39) },
  friction: reckoned({ force: newtons(5), measured: false }),
  pulls: reckoned({ out: newtons(44), in: newtons(15) }),
  ...changes,
});

type Choice = Extract<SetAssessment['choice'], { readonly known: true }>['value'];

/** A choice whose worst imbalance is this; a mix better than it may have been passed over. */
export const choiceOf = (worstN: number, leastWorstN = worstN): Choice => {
  const mix = (counts: Readonly<Record<string, number>>, worst: number) => ({
    counts,
    bricks: 10,
    plates: 0,
    stackHeight: 0.33,
    order: [],
    platesAfter: [],
    kinds: 1,
    worstN: worst,
    arborMass: 150,
  });
  return {
    chosen: mix({ B: 10, C: 0 }, worstN),
    next: [],
    leastWorst: mix({ B: 9, C: 2 }, leastWorstN),
    // Half of what the smallest brick, 5 kg, shifts.
    bandN: 24.5,
    heldBackBy: [],
    optimal: true,
    searched: 1,
  };
};

export const noChoice = (code: 'holdsTooWeak' | 'notFound', reason: string): Choice => ({
  infeasible: { code, reason, smallestChange: null, otherChanges: [] },
});

const recordedOf = (state: SetState): SetAssessment['recorded'] => ({
  state,
  arborMass: state.stack === null ? blocked(['stack']) : reckoned(kilograms(150)),
  imbalance:
    state.height === null
      ? blocked(['height of the batten'])
      : reckoned({ low: newtons(-10), high: newtons(-10) }),
  pull: null,
});

/** What a test changes of the example. */
export type Scene = {
  readonly house?: Partial<House>;
  readonly rules?: Partial<House['rules']>;
  readonly lineSet?: LineSet;
  readonly hang?: Hang | null;
  readonly plan?: Partial<SetPlan> | null;
  readonly set?: Partial<SetAssessment>;
  readonly record?: SetState;
  readonly recorded?: Partial<SetAssessment['recorded']>;
  readonly galleries?: HouseState['galleries'];
  readonly cues?: readonly Cue[];
  readonly otherHangs?: readonly Hang[];
  /** Empty sets further upstage. */
  readonly otherSets?: readonly LineSet[];
  readonly totals?: Partial<HouseTotals>;
  readonly nowMs?: number;
};

export const assessmentOf = (scene: Scene): SetAssessment => {
  const { lineSet = exampleSet, hang = exampleHang, plan = {}, record, recorded } = scene;
  return {
    lineSet,
    hang,
    takeoffs: [],
    hung: reckoned({
      withoutLoom: kilograms(100),
      loom: kilograms(0),
      uncertainty: kilograms(2),
      uncertaintyRss: kilograms(2),
    }),
    bare: reckoned({ set: { ...balanceSet, items: [] }, curve: curveOf(plainNodes) }),
    room: reckoned({ above: metres(0.2), below: metres(0.3) }),
    choice: reckoned(choiceOf(39)),
    plan:
      hang === null || plan === null
        ? blocked(['the plan of this example'])
        : reckoned(planOf(plan, hang)),
    windows: [{ gallery: 'upper', window: reckoned({ from: metres(1), to: metres(2) }) }],
    recorded: {
      ...recordedOf(record ?? unknownRecord),
      ...recorded,
    },
    structure: reckoned(structureOf()),
    ...scene.set,
  };
};

const unknownRecord: SetState = {
  height: null,
  lock: null,
  ring: null,
  collar: null,
  stack: null,
  items: null,
  restraints: null,
  service: null,
  tag: null,
  knowledge: { basis: 'unknown', at: null, by: null, second: null },
  pullTest: null,
};

/** Judges a scene, and sees to it that every finding can be said with what it carries. */
export const judgeScene = (scene: Scene): readonly Finding[] => {
  const { lineSet = exampleSet, hang = exampleHang, record, galleries, cues, nowMs } = scene;
  const { otherSets = [] } = scene;
  const house: House = {
    ...exampleHouse,
    lineSets: [lineSet, ...otherSets],
    ...scene.house,
    rules: { ...exampleHouse.rules, ...scene.rules },
  };
  const hangs = [...(hang === null ? [] : [hang]), ...(scene.otherHangs ?? [])];
  const show = { ...showOf(hangs), cues: cues ?? [] };
  const state =
    record === undefined && galleries === undefined
      ? null
      : {
          ...stateOf(record === undefined ? {} : { [lineSet.id]: record }),
          galleries: galleries ?? {},
        };
  const sets = [
    assessmentOf(scene),
    ...otherSets.map((other) => assessmentOf({ lineSet: other, hang: null })),
  ];
  const assessment: Assessment = {
    sets,
    bricks: [],
    totals: { ...noTotals, ...scene.totals },
  };
  const findings = judge(house, show, state, assessment, nowMs === undefined ? {} : { nowMs });
  for (const finding of findings) assertSaid(finding);
  return findings;
};

/** The findings of one rule on a scene. */
export const found = (code: RuleCode, scene: Scene = {}): readonly Finding[] =>
  judgeScene(scene).filter((finding) => finding.code === code);

/** Placeholders of a rule's sentence that its finding has nothing to put in for. */
export const unsaid = (finding: Finding): readonly string[] => {
  const says = ruleOf(finding.code)?.says ?? '{no rule}';
  const { measured, limit, at, facts } = finding;
  const has: Readonly<Record<string, boolean>> = {
    measured: measured !== null,
    limit: limit !== null,
    excess: measured !== null && limit !== null,
    set: at.set !== undefined,
    item: at.item !== undefined,
  };
  return [...says.matchAll(/\{(\w+)\}/g)]
    .map(([, name = '']) => name)
    .filter((name) => !(has[name] ?? facts[name] !== undefined));
};

const assertSaid = (finding: Finding): void => {
  const missing = unsaid(finding);
  assert(missing.length === 0, `${finding.code} can be said; it lacks ${missing.join(', ')}`);
};
