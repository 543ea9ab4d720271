/** The arbor of a step with bricks: what is on, the next, those to come; and how high they lie. */
import { isBrickStep, stackAfter } from '#call';
import { type WorkStack, workStackDrawing } from '#drawings';
import type { House } from '#house';
import { formatLength, INCH, metres } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import { phrase } from '#texts';
import { DrawingView } from '../drawing/drawing-view.tsx';
import type { PostTask } from './tasks.ts';

type StackProps = {
  readonly task: PostTask;
  /** How the set stood before the step. */
  readonly before: Standing;
  readonly house: House;
  readonly physics: OrderPhysics | null;
  readonly isWide: boolean;
};

/** `3'-9" up`: above the floor that the loaders stand on. */
const upWords = ({ before, house, physics, task }: StackProps, count: number): string | null => {
  if (physics === null || !isBrickStep(task.step)) return null;
  const { gallery } = task.step;
  const floorM = physics.galleries.find(({ id }) => id === gallery)?.floorM;
  const stack = stackAfter(before.stack, task.step, count);
  if (floorM === undefined || stack === null) return null;
  const aboveM = physics.topOfStackM({ height: before.height, stack }) - floorM;
  // For a hand that lifts a brick the nearest inch or centimetre is enough.
  const grainM = house.units === 'customary' ? INCH : 0.01;
  const shown = metres(grainM * Math.max(0, Math.round(aboveM / grainM)));
  const height = formatLength(shown, house, {
    customaryLength: 'feetInches',
  });
  return phrase(house, '{height} up', { height });
};

const WIDE = { width: 312, height: 250, letter: 24, isLabelled: true };
const NARROW = { width: 120, height: 150, letter: 24, isLabelled: false };

export const StackView = (props: StackProps) => {
  const { task, before, house, isWide } = props;
  const { step } = task;
  if (!isBrickStep(step)) return null;
  const after = stackAfter(before.stack, step, step.count);
  const done = task.is === 'inHand' ? task.leave.plates : 0;
  if (after === null) return null;
  const work: WorkStack = {
    ...{ set: task.set, before: before.stack, after, act: step.act, count: step.count, done },
    nextAt: done < step.count ? upWords(props, done) : null,
    lastAt: done < step.count ? upWords(props, step.count - 1) : null,
  };
  const drawing = workStackDrawing(work, house, isWide ? WIDE : NARROW);
  return <DrawingView drawing={drawing} className="work-stack" />;
};
