/** How large a drawing of the house is, and which set a finger meant. */
import type { HouseMoment, SetAssessment } from '#assessment';
import { type FieldSize, type FieldView, upstageOf } from '#drawings';

export type ViewProps = {
  readonly moment: HouseMoment;
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
};

const LETTER = 14;
const PHONE_LETTER = 12.5;
const PHONE = 480;
const TALLEST = 900;
/** Narrower than this nothing on it could be read, px. */
export const LEAST_WIDTH = 200;
/** A finger's half width to each side of a batten, px. */
const FINGER = 24;

export const letterFor = (room: number): number => (room < PHONE ? PHONE_LETTER : LETTER);

/** As tall as the width asks for, and no taller than what can be seen at once. */
export const fieldSize = (room: number, { left, right, bottom, top }: FieldView): FieldSize => ({
  width: room,
  height: Math.min(TALLEST, Math.round((room * (top - bottom)) / (right - left))),
});

/** The set nearest to a place upstage, m, if it is within a finger. */
export const nearestSet = (
  sets: readonly SetAssessment[],
  upstageM: number,
  perMetre: number,
): string | null => {
  const [near] = sets
    .flatMap((set) => {
      const at = upstageOf(set);
      return at === null ? [] : [{ id: set.lineSet.id, px: Math.abs(at - upstageM) * perMetre }];
    })
    .toSorted((one, other) => one.px - other.px);
  return near !== undefined && near.px <= FINGER ? near.id : null;
};
