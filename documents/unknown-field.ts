/** A field that may be unknown: what it is called, and what waits for it. */

export type FieldWords = {
  readonly keys: readonly string[];
  /** Where the document names the field otherwise than the engine. */
  readonly documentKeys?: readonly string[];
  readonly what: string;
  readonly blocks: string;
  /** Where a list is known and something in its entries may not be. */
  readonly each?: readonly string[];
  /** Which sets it matters on: those with an arbor, those that travel; absent, all of them. */
  readonly only?: 'purchase' | 'travelling';
};

export const field = (key: string, what: string, blocks: string): FieldWords => ({
  keys: key.split('.'),
  what,
  blocks,
});

export const purchase = (key: string, what: string, blocks: string): FieldWords => ({
  ...field(key, what, blocks),
  only: 'purchase',
});

export const travelling = (key: string, what: string, blocks: string): FieldWords => ({
  ...field(key, what, blocks),
  only: 'travelling',
});

export const each = (key: string, inner: string, what: string, blocks: string): FieldWords => ({
  ...field(key, what, blocks),
  each: [inner],
});
