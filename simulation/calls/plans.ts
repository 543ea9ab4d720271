/** Orders of work as a head flyman has them made for a call: from how the set is said to stand. */
import {
  crewQuestion,
  isAccepted,
  loadGoal,
  openJob,
  strikeGoal,
  type WorkedOrder,
  workOut,
} from '#orders';
import type { HouseNow, Standing, Step } from '#state';
import type { Demo } from './demo-call.ts';

type Wanted = 'load' | 'strike';

type MadePlan = {
  readonly steps: readonly Step[];
  /** Made with every mass at its worst, or only as they are written. */
  readonly doubt: 'worst' | 'none';
};

const kept = new Map<string, MadePlan | null>();

/** A search that takes longer is left: the crew has other sets to work on. */
const STATES_MOST = 20_000;

type Asked = {
  readonly set: string;
  readonly standing: Standing;
  readonly wanted: Wanted;
  /** Bricks that lie loose, as the call has them. */
  readonly galleries: HouseNow['galleries'];
};

/** Null where no order is found, or a value is not known. */
export const planFor = ({ which, documents }: Demo, asked: Asked): MadePlan | null => {
  const { set, wanted, standing, galleries } = asked;
  const stocks = Object.values(galleries).map(({ stock }) => stock);
  const key = `${which} ${set} ${wanted} ${JSON.stringify([standing, stocks])}`;
  const before = kept.get(key);
  if (before !== undefined) return before;
  const plan = made(documents, asked);
  kept.set(key, plan);
  return plan;
};

const made = (
  { house, show, state }: Demo['documents'],
  { set, standing, wanted, galleries }: Asked,
): MadePlan | null => {
  const counted = Object.entries(state.galleries).map(([id, gallery]) => [
    id,
    { ...gallery, stock: galleries[id]?.stock ?? gallery.stock },
  ]);
  const now = { ...state, galleries: Object.fromEntries(counted) };
  const job = openJob({ house, show, state: now }, set);
  if (!job.ok) return null;
  const start = { standing: { ...standing, closed: [] }, assumed: [] };
  const goal =
    wanted === 'load' ? loadGoal(job.value, null) : strikeGoal(job.value, standing, null);
  if (!goal.ok) return null;
  const question = crewQuestion({ job: job.value, start, goal: goal.value, kind: wanted });
  for (const doubt of ['worst', 'none'] as const) {
    const worked = workOut({ ...question, doubt }, { explain: false, statesMost: STATES_MOST });
    const isFound = 'found' in worked.plan && isAccepted(worked.order);
    if (isFound) return { steps: signed(worked), doubt };
  }
  return null;
};

/** A search gives a restraint neither owner nor tag: the crew has both, or it gets no leave. */
const signed = ({ order }: WorkedOrder): readonly Step[] =>
  order.steps.map((step) =>
    step.act === 'rig' || step.act === 'unrig'
      ? { ...step, restraint: { ...step.restraint, owner: 'head flyman', tag: `B${order.set}` } }
      : step,
  );
