/** Reads a record of how things stand, alone or against its house and the show. */
import type { House } from '#house';
import type { Refusal, Result } from '#outcome';
import { ok } from '#outcome';
import type { Show } from '#show';
import type { HouseState } from '#state';
import type { Faults } from './faults.ts';
import type { JsonObject } from './json.ts';
import type { Read, Reading } from './read-document.ts';
import { readFromText, readFromValue } from './read-document.ts';
import { checkState, checkStateInHouse, checkStateInShow } from './state-checks.ts';
import type { WrittenState } from './state-shape.ts';
import { stateShape } from './state-shape.ts';

export type StateDocument = { readonly raw: JsonObject; readonly state: HouseState };

type Against = { readonly house: House | undefined; readonly show: Show | undefined };

const assemble = (written: WrittenState, { house, show }: Against, faults: Faults): HouseState => {
  const { $schema, format, version, house: houseId, ...rest } = written;
  const state: HouseState = { ...rest, houseId };
  checkState(state, faults);
  const isOurHouse = !house || checkStateInHouse(state, house, faults);
  if (show && isOurHouse) checkStateInShow(state, show, faults);
  return state;
};

const reading = (against: Against): Reading<WrittenState, HouseState> => ({
  kind: 'state',
  shape: stateShape,
  assemble: (written, faults) => assemble(written, against, faults),
});

type Answer = Result<StateDocument, readonly Refusal[]>;

const named = (read: Result<Read<HouseState>, readonly Refusal[]>): Answer =>
  read.ok ? ok({ raw: read.value.raw, state: read.value.value }) : read;

/** With the house, sets, galleries, brick kinds and heights are checked; with the show, items. */
export const readState = (text: unknown, house?: House, show?: Show): Answer =>
  named(readFromText(reading({ house, show }), text));

/** The same for a value that has been parsed. */
export const readStateValue = (value: unknown, house?: House, show?: Show): Answer =>
  named(readFromValue(reading({ house, show }), value));
