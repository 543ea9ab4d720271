/** The drill that is under way: an object of its own, and a count that draws it anew. */
import { useMemo, useReducer } from 'react';
import { type Drill, type DrillFault, type DrillView, openDrill } from '#call';
import type { OrderBrick, PostId } from '#state';

type DrillStart = Pick<Parameters<typeof openDrill>[0], 'set' | 'job' | 'documents' | 'steps'>;

export type Begun = {
  readonly start: DrillStart;
  readonly trainee: PostId;
  readonly fault: DrillFault | null;
  /** Of each step, in a few words. */
  readonly titles: readonly string[];
  readonly nameOf: (item: string) => string;
  /** What energy is told by: so many of them let fall. */
  readonly bricks: readonly OrderBrick[];
};

export type DrillHere = {
  readonly view: DrillView;
  readonly goOn: Drill['goOn'];
  readonly asTold: Drill['asTold'];
  readonly act: Drill['act'];
};

export const useDrill = ({ start, trainee, fault }: Begun): DrillHere => {
  const drill = useMemo(
    () => openDrill({ ...start, trainee, fault, startMs: Date.now() }),
    [start, trainee, fault],
  );
  const [, redraw] = useReducer((count: number) => count + 1, 0);
  const drawn =
    <A extends readonly unknown[]>(call: (...given: A) => void) =>
    (...given: A): void => {
      call(...given);
      redraw();
    };
  return {
    view: drill.view(),
    goOn: drawn(drill.goOn),
    asTold: drawn(drill.asTold),
    act: drawn(drill.act),
  };
};
