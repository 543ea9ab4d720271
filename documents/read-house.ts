/** Reads a house: text or JSON value in, the house and its raw document out, or every refusal. */
import type { House } from '#house';
import type { Refusal, Result } from '#outcome';
import { ok } from '#outcome';
import { weighedKind } from './brick-sample.ts';
import type { Faults } from './faults.ts';
import { checkHouse } from './house-checks.ts';
import type { WrittenHouse } from './house-shape.ts';
import { houseShape } from './house-shape.ts';
import type { JsonObject } from './json.ts';
import { checkLineSets } from './line-set-checks.ts';
import { checkTypes, lineSetsOf } from './line-sets.ts';
import type { Read, Reading } from './read-document.ts';
import { readFromText, readFromValue } from './read-document.ts';

export type HouseDocument = { readonly raw: JsonObject; readonly house: House };

const assemble = (written: WrittenHouse, faults: Faults): House => {
  checkTypes(written.setTypes, faults);
  const placed = lineSetsOf(written.setTypes, written.lineSets, faults);
  const { $schema, format, version, setTypes, ...rest } = written;
  const house: House = {
    ...rest,
    brickKinds: rest.brickKinds.map((kind, index) => weighedKind(kind, index, faults)),
    lineSets: placed.map(({ set }) => set),
  };
  checkHouse(house, written.lineSets, faults);
  checkLineSets(house, { placed, written }, faults);
  return house;
};

const reading: Reading<WrittenHouse, House> = { kind: 'house', shape: houseShape, assemble };

type Answer = Result<HouseDocument, readonly Refusal[]>;

const named = (read: Result<Read<House>, readonly Refusal[]>): Answer =>
  read.ok ? ok({ raw: read.value.raw, house: read.value.value }) : read;

/** Refusals carry codes of `DOC` and `QTY`, all of them at once, each with its path. */
export const readHouse = (text: unknown): Answer => named(readFromText(reading, text));

/** The same for a parsed value; keys that stood twice in its text are lost by then. */
export const readHouseValue = (value: unknown): Answer => named(readFromValue(reading, value));
