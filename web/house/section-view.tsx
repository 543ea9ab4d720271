/** The section or the plan of the house at one moment, as large as the screen allows. */
import { useCallback, useMemo, useState } from 'react';
import {
  type FieldPlace,
  type FieldScale,
  type FieldView,
  sectionParts,
  sectionStrips,
  sectionWithEyes,
  wholeSection,
} from '#drawings';
import { useWidth } from '../drawing/use-width.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { HouseField } from './house-field.tsx';
import { fieldSize, LEAST_WIDTH, letterFor, nearestSet, type ViewProps } from './view-size.ts';

export const SectionView = ({ moment, setInHand, onTake }: ViewProps) => {
  const tell = useTell();
  const { house, sets } = useWork();
  const [box, room] = useWidth<HTMLDivElement>();
  const [arbors, setArbors] = useState(false);
  const assessed = useMemo(() => sets.map(({ set }) => set), [sets]);
  const whole = useMemo(() => wholeSection(house), [house]);
  const letter = letterFor(room);
  const strips = sectionStrips(letter, room);
  const size = fieldSize(room - strips.heights, whole);
  const { width, height } = size;
  const draw = useCallback(
    (view: FieldView) => {
      const parts = sectionParts(
        { house, sets: assessed, moment },
        {
          width,
          height,
          letter,
          view,
          strips: sectionStrips(letter, room),
          chosen: setInHand,
          arbors,
        },
      );
      return { ...parts, foot: parts.upstage };
    },
    [house, assessed, moment, width, height, letter, room, setInHand, arbors],
  );
  const touch = ({ along }: FieldPlace, { perMetre }: FieldScale): void => {
    const near = nearestSet(assessed, along, perMetre);
    if (near !== null) onTake(near);
  };
  return (
    <div ref={box} className="section-view">
      {room < LEAST_WIDTH ? null : (
        <HouseField
          size={size}
          whole={whole}
          {...(house.eyes.length === 0
            ? {}
            : { wider: { words: tell('With the seats'), view: sectionWithEyes(house) } })}
          draw={draw}
          onTouch={touch}
        >
          <label className="field-choice">
            <input
              type="checkbox"
              checked={arbors}
              onChange={({ target }) => setArbors(target.checked)}
            />
            {tell('arbors beyond')}
          </label>
        </HouseField>
      )}
    </div>
  );
};
