/** How the cases of this folder ask: numbers in SI or as a person types them, by the doors. */
import type { Dimension } from '#quantities';
import { parseQuantity } from '#quantities';
import type { TakeoffAnswer, TakeoffQuestion } from '#takeoff';
import { takeOffNumbers } from '#takeoff';

/** What a person typed, in SI. */
export const typed = (dimension: Dimension, text: string): number => {
  const answer = parseQuantity(dimension, text);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

export const takenOff = (question: TakeoffQuestion): TakeoffAnswer => {
  const answer = takeOffNumbers(question);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

/** Mass of all of it, hem too, in kg. */
export const totalKg = (question: TakeoffQuestion): number => {
  const { total, needs } = takenOff(question);
  if (total === null) throw new Error(JSON.stringify(needs));
  return total.mass;
};

/** Flat cloth, dry and bare: the shares that a case does not speak of are none. */
export const BARE = { hemAllowance: 0, paint: 0, moisture: 0 } as const;
