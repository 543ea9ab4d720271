import type { Json, JsonObject } from '#documents';

export const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
