import type { SetStructure, StructureState } from '#assessment';

type Beam = StructureState['beam'];
export type Unsteady = Extract<Beam, { readonly unstable: unknown }>['unstable'];
export type Solution = Exclude<Beam, { readonly unstable: unknown }>;

/** The states in which the batten hangs, each with the numbers of its beam. */
export const solvedStates = ({
  states,
}: SetStructure): readonly { readonly state: StructureState; readonly solution: Solution }[] =>
  states.flatMap((state) => ('unstable' in state.beam ? [] : [{ state, solution: state.beam }]));
