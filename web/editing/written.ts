/** A measure as a person wrote it, out of the forms in which documents hold it. */
import { isObject, type Json } from '../keeping/json.ts';

/** The text to type on from; empty where the value is unknown. */
export const writtenText = (value: Json | undefined): string => {
  const inner = isObject(value) ? value['value'] : value;
  return typeof inner === 'string' || typeof inner === 'number' ? String(inner) : '';
};

export const writtenTolerance = (value: Json | undefined): string => {
  const tolerance = isObject(value) ? value['tolerance'] : undefined;
  return typeof tolerance === 'string' || typeof tolerance === 'number' ? String(tolerance) : '';
};
