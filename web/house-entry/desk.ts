/** What every field of a form works on: the document it stands in, and who judges what is typed. */
import { type ComponentType, createContext, useContext } from 'react';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { type DecimalMark, decimalMarkOf } from '#quantities';
import { inHouseWords } from '#sheets';
import type { Inherited } from '../editing/house-edits.ts';
import { at, type Json, type JsonPath } from '../keeping/json.ts';
import type { Field } from './form.ts';
import { givenWords } from './how-words.ts';

export type Named = { readonly id: string; readonly name: string };

export type FieldsProps = {
  readonly fields: readonly Field[];
  readonly path: JsonPath;
  readonly place: string;
};

export type Desk = {
  /** The document; or one entry of it that is not added yet. */
  readonly root: Json;
  readonly house: House;
  /** Keys of the ids of fields, by the place in the root. */
  readonly keysOf: (path: JsonPath) => readonly string[];
  /** One value; undefined takes it away. What was not understood, and nothing changed then. */
  readonly put: (path: JsonPath, value: Json | undefined, what: string) => readonly Refusal[];
  readonly givenAt: (path: JsonPath) => Json | undefined;
  readonly inheritedAt: (path: JsonPath) => Inherited | null;
  /** The rows of some fields; given, since rows may hold entries, which have rows again. */
  readonly Fields: ComponentType<FieldsProps>;
  /** Absent where the entry is not in the house yet, and nothing can name it. */
  readonly naming?: {
    /** What names an entry from outside the house, in words. */
    readonly namedBy: (list: string, id: string) => readonly string[];
    readonly rename: (list: string, from: string, to: string) => readonly Refusal[];
  };
  /** Entries of the house that an id may name. */
  readonly named: (list: string) => readonly Named[];
};

const absent = (): never => {
  throw new Error('defect: no desk above this field');
};

export const DeskContext = createContext<Desk | null>(null);
export const useDesk = (): Desk => useContext(DeskContext) ?? absent();

export const valueAt = ({ root }: Desk, path: JsonPath): Json | undefined => at(root, path);

/** Our own sentence, in the trade words of the house. */
export const say = ({ house }: Desk, sentence: string): string => inHouseWords(sentence, house);

export const sayGiven = (desk: Desk, path: JsonPath): string =>
  givenWords(desk.givenAt(path), desk.house);

/** The same for the record of revisions, which is English in every language. */
export const noted = ({ house }: Desk, sentence: string): string =>
  inHouseWords(sentence, { words: house.words });

/** Between a number and its fraction, as the reader writes it. */
export const markOf = ({ house }: Pick<Desk, 'house'>): DecimalMark => decimalMarkOf(house);
