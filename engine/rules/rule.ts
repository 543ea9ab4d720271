/** What a rule is, and what it is given to judge. */
import type { Assessment, SetAssessment, SetPlan, SetStructure } from '#assessment';
import type { Finding, Level } from '#findings';
import type { House } from '#house';
import type { Hang, Show } from '#show';
import type { HouseState } from '#state';

/** A rule as it stands on paper: RULES.md and the words of a finding are made from it. */
export type RuleDeclaration = {
  readonly code: string;
  readonly title: string;
  /** The levels that it may raise, gravest first; the first is meant where none is said. */
  readonly levels: readonly [Level, ...Level[]];
  /**
   * Where the rule comes from: a published source by its name, 'house rule', 'common practice,
   * no source', or 'trade formula'. The limit of one finding has its own source in the finding.
   */
  readonly source: string;
  /** The formula of the trade that it applies; empty where there is none. */
  readonly cites: string;
  /**
   * The sentence with {placeholders}: `measured`, `limit`, `excess` (how far past the limit, as
   * a size), `set`, `item`, and the names of the finding's facts.
   */
  readonly says: string;
};

/** A value that nobody has given, and what cannot be judged without it. */
export type Lack = {
  readonly lacks: string;
  readonly blocks: string;
  /** A value of the house is missed once, not once for every set. */
  readonly of: 'set' | 'house';
};

export type Opinion = Finding | Lack;

export const isLack = (opinion: Opinion): opinion is Lack => 'lacks' in opinion;

/** One set, and nothing of what hangs on others: such an opinion holds while these are the same. */
export type SetCase = {
  readonly house: House;
  readonly show: Pick<Show, 'cues'> | null;
  /** Null where no record was read at all. */
  readonly state: HouseState | null;
  readonly set: SetAssessment;
  readonly nowMs: number | null;
};

/** One set beside the others of the show. */
export type AmongCase = Omit<SetCase, 'show'> & { readonly show: Show | null };

export type HouseCase = Omit<AmongCase, 'set'> & { readonly assessment: Assessment };

export type SetRule = (the: SetCase) => readonly Opinion[];
export type AmongRule = (the: AmongCase) => readonly Opinion[];
export type HouseRule = (the: HouseCase) => readonly Opinion[];

/** A set that is planned and carried by its own arbor. */
export type PlannedCase = SetCase & { readonly plan: SetPlan; readonly hang: Hang };

/**
 * Judges only a set that hangs and whose plan is known. A plan that is not known is missed by
 * UNK-001; an empty set has none.
 */
export const whenPlanned =
  (judge: (the: PlannedCase) => readonly Opinion[]): SetRule =>
  (the) => {
    const { plan, hang } = the.set;
    return plan.known && hang !== null ? judge({ ...the, plan: plan.value, hang }) : [];
  };

/** The same for a set that its arbor carries. One that steel holds is KIN-002. */
export const whenFlown = (judge: (the: PlannedCase) => readonly Opinion[]): SetRule =>
  whenPlanned((the) => (the.hang.deadHungAt === null ? judge(the) : []));

/** A set whose batten, lines and blocks are known; where they are not, UNK-001 says why. */
export type StructuredCase = SetCase & { readonly structure: SetStructure };

export const whenStructured =
  (judge: (the: StructuredCase) => readonly Opinion[]): SetRule =>
  (the) => {
    const { structure } = the.set;
    return structure.known ? judge({ ...the, structure: structure.value }) : [];
  };
