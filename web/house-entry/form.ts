/**
 * What a form asks for, out of the published schema of a document, so that nothing that a document
 * may hold is left out of the forms, and its help is what the document says of itself.
 */
import { type JsonSchema, schemaOf } from '#documents';
import { unreachable } from '#outcome';
import type { Dimension, UnitSystem } from '#quantities';

/** A sourced value is a measure, a number, how many, or yes and no. */
export type SourcedOf = Dimension | 'number' | 'flag';

export type Form =
  | { readonly kind: 'sourced'; readonly of: SourcedOf }
  | { readonly kind: 'measure'; readonly of: Dimension }
  | { readonly kind: 'text'; readonly isLong: boolean }
  | { readonly kind: 'id' | 'day' | 'flag' | 'count' | 'given' }
  /** Written by the program, and by nobody else. */
  | { readonly kind: 'fixed' }
  | { readonly kind: 'choice'; readonly options: readonly string[] }
  /** From one measure to another; null where it may go on without end. */
  | { readonly kind: 'pair'; readonly of: Dimension; readonly mayGoOn: boolean }
  | { readonly kind: 'list'; readonly of: Form; readonly mayBeUnknown: boolean }
  | { readonly kind: 'record'; readonly of: Form }
  | { readonly kind: 'object'; readonly fields: readonly Field[] }
  /** One of several kinds of object, told apart by one field. */
  | { readonly kind: 'kinds'; readonly by: string; readonly kinds: Readonly<Record<string, Form>> };

export type Field = {
  readonly key: string;
  readonly form: Form;
  readonly about: string;
  readonly isNeeded: boolean;
};

type Node = JsonSchema;

const DEFINITION = '#/$defs/';
const SOURCED = 'sourced-';
/** The longest text that stands in one line of a table. */
const LINE = 120;

const defect = (schema: Node): never => {
  throw new Error(`defect: no form asks for ${JSON.stringify(schema).slice(0, 200)}`);
};

const nodesOf = (value: unknown): readonly Node[] => (Array.isArray(value) ? value : []);

export const formOf = (schema: Node): Form => {
  if (typeof schema['$ref'] === 'string') return ofDefinition(schema['$ref']);
  if (Object.hasOwn(schema, 'const')) return { kind: 'fixed' };
  if (Array.isArray(schema['enum'])) return { kind: 'choice', options: schema['enum'] };
  if (Array.isArray(schema['oneOf'])) return ofKinds(nodesOf(schema['oneOf']));
  if (Array.isArray(schema['anyOf'])) return ofListOrUnknown(nodesOf(schema['anyOf']), schema);
  switch (schema['type']) {
    case 'boolean':
      return { kind: 'flag' };
    case 'integer':
      return { kind: 'count' };
    case 'string':
      return ofText(schema);
    case 'array':
      return Array.isArray(schema['prefixItems'])
        ? ofPair(nodesOf(schema['prefixItems']), schema)
        : { kind: 'list', of: formOf(schema['items'] as Node), mayBeUnknown: false };
    case 'object':
      return schema['properties'] === undefined
        ? { kind: 'record', of: formOf(schema['additionalProperties'] as Node) }
        : { kind: 'object', fields: fieldsOf(schema) };
    default:
      return defect(schema);
  }
};

const ofDefinition = (reference: string): Form => {
  const name = reference.slice(DEFINITION.length);
  if (name === 'given') return { kind: 'given' };
  return name.startsWith(SOURCED)
    ? { kind: 'sourced', of: name.slice(SOURCED.length) as SourcedOf }
    : { kind: 'measure', of: name as Dimension };
};

const ofText = ({ pattern, format, maxLength }: Node): Form => {
  if (format === 'date') return { kind: 'day' };
  if (typeof pattern === 'string' && pattern.startsWith('^[A-Za-z0-9]')) return { kind: 'id' };
  return { kind: 'text', isLong: typeof maxLength === 'number' && maxLength > LINE };
};

const ofListOrUnknown = (ways: readonly Node[], schema: Node): Form => {
  const list = ways.map(formOf).find((form) => form.kind === 'list');
  return list === undefined ? defect(schema) : { ...list, mayBeUnknown: true };
};

const ofPair = (ends: readonly Node[], schema: Node): Form => {
  const forms = ends.map((end) => formOf(nodesOf(end['anyOf'])[0] ?? end));
  const [first] = forms;
  if (first?.kind !== 'measure') return defect(schema);
  return { kind: 'pair', of: first.of, mayGoOn: ends.some((end) => end['anyOf'] !== undefined) };
};

const propertiesOf = (schema: Node): Readonly<Record<string, Node>> =>
  (schema['properties'] ?? {}) as Readonly<Record<string, Node>>;

const constOf = (schema: Node, key: string): unknown => propertiesOf(schema)[key]?.['const'];

const ofKinds = (schemas: readonly Node[]): Form => {
  const [first = {}] = schemas;
  const by = Object.keys(propertiesOf(first)).find((key) => constOf(first, key) !== undefined);
  if (by === undefined) return defect(first);
  const kinds = schemas.map((one) => [String(constOf(one, by)), formOf(one)] as const);
  return { kind: 'kinds', by, kinds: Object.fromEntries(kinds) };
};

const fieldsOf = (schema: Node): readonly Field[] => {
  const needed = new Set(Array.isArray(schema['required']) ? schema['required'] : []);
  return Object.entries(propertiesOf(schema)).map(([key, inner]) => ({
    key,
    form: formOf(inner),
    about: String(inner['description'] ?? ''),
    isNeeded: needed.has(key),
  }));
};

/** The form of the whole document; made once, since a schema never changes while we run. */
const made = new Map<string, Extract<Form, { readonly kind: 'object' }>>();
export const documentForm = (kind: 'house'): Extract<Form, { readonly kind: 'object' }> => {
  const before = made.get(kind);
  if (before !== undefined) return before;
  const form = formOf(schemaOf(kind));
  if (form.kind !== 'object') throw new Error('defect: a document is no object');
  made.set(kind, form);
  return form;
};

const into = (form: Form): Form =>
  form.kind === 'list' || form.kind === 'record' ? into(form.of) : form;

/** The field at `stage.gridHeight` or `setTypes.batten.left`; lists and records are looked into. */
export const fieldAt = (form: Form, path: string): Field => {
  const [key = '', ...rest] = path.split('.');
  const holder = into(form);
  const field =
    holder.kind === 'object' ? holder.fields.find((each) => each.key === key) : undefined;
  if (field === undefined) throw new Error(`defect: no field ${path}`);
  return rest.length === 0 ? field : fieldAt(field.form, rest.join('.'));
};

/** Every place where one value is written, below a field. */
export const leavesBelow = (form: Form, path: string): readonly string[] => {
  switch (form.kind) {
    case 'object':
      return form.fields.flatMap(({ key, form: inner }) => leavesBelow(inner, `${path}.${key}`));
    case 'kinds':
      return [...new Set(Object.values(form.kinds).flatMap((inner) => leavesBelow(inner, path)))];
    case 'list':
    case 'record':
      return leavesBelow(form.of, path);
    case 'sourced':
    case 'measure':
    case 'text':
    case 'id':
    case 'day':
    case 'flag':
    case 'count':
    case 'given':
    case 'fixed':
    case 'choice':
    case 'pair':
      return [path];
    default:
      return unreachable(form);
  }
};

/** How a measure may be typed, in the units of the house. */
export const exampleOf = (of: SourcedOf, units: UnitSystem): string => {
  const definitions = schemaOf('house')['$defs'] as Readonly<Record<string, Node>>;
  const examples = nodesOf(definitions[of]?.['examples']) as readonly unknown[];
  return String(examples[units === 'customary' ? 0 : 1] ?? '');
};
