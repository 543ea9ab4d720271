/** Reads a show, alone or against the house in which it hangs. */
import type { House } from '#house';
import type { Refusal, Result } from '#outcome';
import { ok } from '#outcome';
import type { Show } from '#show';
import type { Faults } from './faults.ts';
import type { JsonObject } from './json.ts';
import type { Read, Reading } from './read-document.ts';
import { readFromText, readFromValue } from './read-document.ts';
import type { ReadMemory } from './shape/shape.ts';
import { checkShow } from './show-checks.ts';
import { checkShowInHouse, inRailOrder } from './show-in-house.ts';
import type { WrittenShow } from './show-shape.ts';
import { showShape } from './show-shape.ts';

export type ShowDocument = { readonly raw: JsonObject; readonly show: Show };

/** Checks run in the order of the file, so that paths lead to where a person wrote it. */
const assemble = (written: WrittenShow, house: House | undefined, faults: Faults): Show => {
  const { $schema, format, version, house: houseId, ...rest } = written;
  const show: Show = { ...rest, houseId };
  checkShow(show, faults);
  if (house) checkShowInHouse(show, house, faults);
  return { ...show, hangs: inRailOrder(show.hangs, house) };
};

const reading = (house: House | undefined): Reading<WrittenShow, Show> => ({
  kind: 'show',
  shape: showShape,
  assemble: (written, faults) => assemble(written, house, faults),
});

type Answer = Result<ShowDocument, readonly Refusal[]>;

const named = (read: Result<Read<Show>, readonly Refusal[]>): Answer =>
  read.ok ? ok({ raw: read.value.raw, show: read.value.value }) : read;

/** With the house, sets, brick kinds and heights are checked against it. */
export const readShow = (text: unknown, house?: House): Answer =>
  named(readFromText(reading(house), text));

/**
 * The same for a value that has been parsed. With a memory of its own, what has not changed since
 * the last reading (the same objects) is not read again.
 */
export const readShowValue = (value: unknown, house?: House, memory?: ReadMemory): Answer =>
  named(readFromValue(reading(house), value, memory));
