/**
 * A document as text that a person can read and a program can compare line by line: two spaces,
 * keys in the order in which they were written, short lists and objects on one line.
 */
import type { Json } from './json.ts';

const COLUMNS = 100;
const INDENT = '  ';

export const writeDocument = (raw: Json): string => `${written(raw, 0, 0)}\n`;

/** `ahead` is what already stands on the line, and one column is kept for a comma after it. */
const written = (value: Json, depth: number, ahead: number): string => {
  const flat = flatText(value);
  if (flat !== undefined && ahead + flat.length + 1 <= COLUMNS) return flat;
  return spread(value, depth) ?? JSON.stringify(value);
};

const isScalar = (value: Json): boolean => value === null || typeof value !== 'object';

/** One line for a scalar, for a list of scalars or of such lists, for an object of such. */
const flatText = (value: Json, deep = 0): string | undefined => {
  if (isScalar(value)) return JSON.stringify(value);
  if (deep > 1) return undefined;
  if (Array.isArray(value)) {
    const parts = value.map((entry: Json) => flatText(entry, deep + 1));
    return parts.every((part) => part !== undefined) ? `[${parts.join(', ')}]` : undefined;
  }
  const parts = Object.entries(value as object).map(([key, entry]: [string, Json]) => {
    const text = flatText(entry, deep + 1);
    return text === undefined ? undefined : `${JSON.stringify(key)}: ${text}`;
  });
  if (parts.length === 0) return '{}';
  return parts.every((part) => part !== undefined) ? `{ ${parts.join(', ')} }` : undefined;
};

const spread = (value: Json, depth: number): string | undefined => {
  if (isScalar(value)) return undefined;
  const inner = INDENT.repeat(depth + 1);
  const end = INDENT.repeat(depth);
  if (Array.isArray(value)) {
    const lines = value.map((entry: Json) => inner + written(entry, depth + 1, inner.length));
    return `[\n${lines.join(',\n')}\n${end}]`;
  }
  const lines = Object.entries(value as object).map(([key, entry]: [string, Json]) => {
    const head = `${inner}${JSON.stringify(key)}: `;
    return head + written(entry, depth + 1, head.length);
  });
  return `{\n${lines.join(',\n')}\n${end}}`;
};
