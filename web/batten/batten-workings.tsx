/** Every figure of the batten opens its working; of how it is, not of a question. */
import { useMemo } from 'react';
import { type SetAssessment, type StructureState, structureWorkingsOf } from '#assessment';
import type { House } from '#house';
import { useTell } from '../language/use-tell.ts';
import { rowOfWorking } from '../set/check-rows.ts';
import { CheckTable } from '../set/checks.tsx';

type Props = {
  readonly set: SetAssessment;
  readonly house: House;
  readonly state: StructureState;
};

export const BattenWorkings = ({ set, house, state }: Props) => {
  const tell = useTell();
  const rows = useMemo(() => {
    const { plant, states, whole } = structureWorkingsOf(set, house);
    const own = states.find((each) => each.state === state)?.workings ?? [];
    return [...own, ...whole, ...plant].map((working) => rowOfWorking(working, house));
  }, [set, house, state]);
  if (rows.length === 0) return null;
  return (
    <details className="batten-workings">
      <summary>
        {tell('Worked out, each with its working: of how it is, not of a question')}
      </summary>
      <CheckTable rows={rows} />
    </details>
  );
};
