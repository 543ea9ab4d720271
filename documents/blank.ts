/** Documents to begin with: nothing in them is known, and nothing is made up. */
import type { UnitSystem } from '#quantities';
import type { JsonObject } from './json.ts';
import { CURRENT_VERSION } from './migrations.ts';

export type BlankHouse = {
  readonly id: string;
  readonly name: string;
  readonly units: UnitSystem;
  readonly words: 'US' | 'UK';
  /** Asked of the person, since either wall would be a guess. */
  readonly operatingSide: 'stageRight' | 'stageLeft';
};

export const blankHouse = ({ id, name, units, words, operatingSide }: BlankHouse): JsonObject => ({
  format: 'counterpoise-house',
  version: CURRENT_VERSION,
  id,
  name,
  units,
  words,
  stage: { operatingSide },
  rules: {},
  brickKinds: [],
  galleries: [],
  rails: [],
  setTypes: {},
  lineSets: [],
});

export const blankShow = ({
  id,
  name,
  house,
}: {
  readonly id: string;
  readonly name: string;
  readonly house: string;
}): JsonObject => ({
  format: 'counterpoise-show',
  version: CURRENT_VERSION,
  id,
  name,
  house,
  hangs: [],
  cues: [],
});

/** A record in which nothing has been looked at: every set in it is unknown. */
export const blankState = ({
  house,
  demo,
  at,
  by,
}: {
  readonly house: string;
  readonly demo: boolean;
  /** ISO date and time. */
  readonly at: string;
  readonly by: string;
}): JsonObject => ({
  format: 'counterpoise-state',
  version: CURRENT_VERSION,
  house,
  ...(demo ? { demo } : {}),
  at,
  by,
  sets: {},
  galleries: {},
});
