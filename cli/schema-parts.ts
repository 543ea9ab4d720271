/** Parts of a JSON Schema for answers. */
export type Schema = Readonly<Record<string, unknown>>;

export const number: Schema = { type: 'number' };
export const numbers: Schema = { type: 'array', items: number };
export const listOf = (items: Schema): Schema => ({ type: 'array', items });
export const object = (
  properties: Readonly<Record<string, Schema>>,
  required: readonly string[],
): Schema => ({ type: 'object', properties, required });
