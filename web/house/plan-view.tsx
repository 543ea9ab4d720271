/** The plan of the stage at one moment. */
import { useCallback, useMemo } from 'react';
import {
  type FieldPlace,
  type FieldScale,
  type FieldView,
  planParts,
  planStrips,
  wholePlan,
} from '#drawings';
import { useWidth } from '../drawing/use-width.ts';
import { useWork } from '../reckoning/use-work.ts';
import { HouseField } from './house-field.tsx';
import { fieldSize, LEAST_WIDTH, letterFor, nearestSet, type ViewProps } from './view-size.ts';

export const PlanView = ({ moment, setInHand, onTake }: ViewProps) => {
  const { house, sets } = useWork();
  const [box, room] = useWidth<HTMLDivElement>();
  const assessed = useMemo(() => sets.map(({ set }) => set), [sets]);
  const whole = useMemo(() => wholePlan(house), [house]);
  const letter = letterFor(room);
  const strips = useMemo(() => planStrips(letter), [letter]);
  const { width, height } = fieldSize(room - strips.sets, whole);
  const draw = useCallback(
    (view: FieldView) => {
      const options = { width, height, letter, view, strips, chosen: setInHand };
      const parts = planParts({ house, sets: assessed, moment }, options);
      return { ...parts, names: null, heights: parts.sets };
    },
    [house, assessed, moment, width, height, letter, strips, setInHand],
  );
  const touch = ({ up }: FieldPlace, { perMetre }: FieldScale): void => {
    const near = nearestSet(assessed, up, perMetre);
    if (near !== null) onTake(near);
  };
  return (
    <div ref={box} className="section-view">
      {room < LEAST_WIDTH ? null : (
        <HouseField size={{ width, height }} whole={whole} draw={draw} onTouch={touch} />
      )}
    </div>
  );
};
