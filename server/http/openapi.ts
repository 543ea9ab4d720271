/**
 * The interface as others read it (OpenAPI 3.1): from the schemas by which the routes read what is
 * sent, the table of rights, the shapes of answers, and the published forms of the documents.
 */
import type { FastifyInstance } from 'fastify';
import * as z from 'zod';
import { type Json, type JsonObject, schemaOf } from '#documents';
import type { AppParts } from './app-parts.ts';
import { SHAPES } from './openapi-shapes.ts';
import { ROUTE_WORDS } from './openapi-words.ts';
import { type Need, RIGHTS } from './rights-table.ts';

type Route = { readonly method: string; readonly url: string; readonly schema: JsonObject };

/** To be laid down before the other routes, which it gathers as they are. */
export const openApiRoute = (app: FastifyInstance, { selfCheck }: AppParts): void => {
  const routes = gatherRoutes(app);
  let made: JsonObject | undefined;
  app.get('/api/openapi.json', async () => {
    made ??= openApiOf({ version: selfCheck.record().installation.version, routes });
    return made;
  });
};

const gatherRoutes = (app: FastifyInstance): readonly Route[] => {
  const routes: Route[] = [];
  app.addHook('onRoute', ({ method, url, schema = {} }) => {
    for (const each of [method].flat()) {
      if (each === 'HEAD' || !url.startsWith('/api/')) continue;
      routes.push({ method: each, url, schema: JSON.parse(JSON.stringify(schema)) as JsonObject });
    }
  });
  return routes;
};

type About = { readonly version: string; readonly routes: readonly Route[] };

const openApiOf = ({ version, routes }: About): JsonObject => ({
  openapi: '3.1.1',
  info: {
    title: 'Counterpoise',
    version,
    summary: 'The house, its shows, and the record of a counterweight fly system',
    description: ABOUT,
    license: { name: 'MIT', identifier: 'MIT' },
  },
  servers: [{ url: '/', description: 'The server that answers this.' }],
  paths: pathsOf(routes),
  components: {
    schemas: { ...shapes(), ...documentShapes() },
    securitySchemes: {
      token: {
        type: 'http',
        scheme: 'bearer',
        description: 'Of a program: an owner gives it on the screen of people.',
      },
      session: {
        type: 'apiKey',
        in: 'cookie',
        name: '__Host-counterpoise-session',
        description: 'Of a person who signed in; over plain HTTP without `__Host-`.',
      },
    },
  },
});

const ABOUT =
  'Counterpoise advises and records. It commands nothing, it is no interlock, and it certifies ' +
  'nothing; a licensed or competent person decides. A measure is a text with its unit. Faults ' +
  'are problem details (RFC 9457). On the machine itself no name is needed while its owner ' +
  'leaves it so.';

const ref = (name: string): JsonObject => ({ $ref: `#/components/schemas/${name}` });

const shapes = (): JsonObject => {
  const registry = z.registry<{ id: string }>();
  for (const [id, shape] of Object.entries(SHAPES)) registry.add(shape, { id });
  const { schemas } = z.toJSONSchema(registry, {
    uri: (id) => `#/components/schemas/${id}`,
    io: 'input',
  });
  return Object.fromEntries(
    Object.entries(schemas).map(([id, { $id: _id, $schema: _schema, ...shape }]) => [
      id,
      JSON.parse(JSON.stringify(shape)) as Json,
    ]),
  );
};

/** The kinds that are kept; an order of work is made anew each time. */
const KINDS = ['house', 'show', 'state'] as const;

const nameOfKind = (kind: string): string => `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;

/** The published forms, whose own definitions are found from where they stand here. */
const documentShapes = (): JsonObject =>
  Object.fromEntries(
    KINDS.map((kind) => {
      const { $id: _id, $schema: _schema, ...shape } = schemaOf(kind) as JsonObject;
      const name = nameOfKind(kind);
      const text = JSON.stringify(shape).replaceAll(
        '"$ref":"#/',
        `"$ref":"#/components/schemas/${name}/`,
      );
      return [name, JSON.parse(text) as Json];
    }),
  );

const pathsOf = (routes: readonly Route[]): JsonObject => {
  const paths: Record<string, Record<string, Json>> = {};
  for (const route of routes.toSorted((a, b) => (a.url < b.url ? -1 : 1))) {
    const path = route.url.replace(/:(\w+)/g, '{$1}');
    paths[path] = { ...paths[path], [route.method.toLowerCase()]: operationOf(route) };
  }
  return paths;
};

const operationOf = ({ method, url, schema }: Route): JsonObject => {
  const words = ROUTE_WORDS[`${method} ${url}`];
  const needs = RIGHTS.find((right) => right.method === method && right.url === url)?.needs;
  const body = words?.body === undefined ? bodyOf(schema['body']) : ref(words.body);
  return {
    summary: words?.summary ?? '',
    description: [words?.detail, needWords(needs)].filter((text) => text !== undefined).join(' '),
    operationId: nameOfRoute(method, url),
    ...(needs === 'anyone' ? { security: [] } : { security: [{ token: [] }, { session: [] }, {}] }),
    parameters: [
      ...fieldsOf(schema['params'], 'path'),
      ...fieldsOf(schema['querystring'], 'query'),
    ],
    ...(body === null
      ? {}
      : { requestBody: { required: true, content: { 'application/json': { schema: body } } } }),
    responses: answersOf(words, schema),
  };
};

/** `getApiDocumentsId`, by which a generated client calls it. */
const nameOfRoute = (method: string, url: string): string =>
  method.toLowerCase() + url.replace(/[^A-Za-z]+(\w?)/g, (_, next: string) => next.toUpperCase());

const needWords = (needs: Need | undefined): string => {
  if (needs === undefined) return 'Shut: no right is laid down.';
  if (needs === 'anyone') return 'Needs no name.';
  return needs === 'signedIn' ? 'Needs a person, of any role.' : `Needs the right to ${needs}.`;
};

/** A document in a body has one of the published forms. */
const bodyOf = (body: Json | undefined): JsonObject | null => {
  if (!isObject(body)) return null;
  const { properties } = body;
  if (!isObject(properties) || properties['document'] === undefined) return body;
  const document = { anyOf: KINDS.map((kind) => ref(nameOfKind(kind))) };
  return { ...body, properties: { ...properties, document } };
};

const isObject = (value: Json | undefined): value is JsonObject =>
  value instanceof Object && !Array.isArray(value);

const fieldsOf = (schema: Json | undefined, place: 'path' | 'query'): readonly JsonObject[] => {
  if (!isObject(schema) || !isObject(schema['properties'])) return [];
  const required = Array.isArray(schema['required']) ? schema['required'] : [];
  return Object.entries(schema['properties']).map(([name, field]) => ({
    name,
    in: place,
    required: place === 'path' || required.includes(name),
    schema: field,
  }));
};

const PROBLEMS: Readonly<Record<number, string>> = {
  400: 'It was not asked in its form.',
  401: 'A name is needed, or what was given is wrong.',
  403: 'Who asks may not, or it comes from a page of others.',
  404: 'There is no such thing.',
  409: 'Somebody was before, or it stands otherwise; nothing changed.',
  413: 'It is larger than anything that is read.',
  415: 'It is not called JSON in its content type.',
  422: 'It was understood and is not taken; nothing changed.',
  429: 'Too often; the header says how long to wait.',
  500: 'A fault of the program; the log of the server has it.',
  503: 'Not now; nothing changed.',
  507: 'The disk of the server is full; nothing changed.',
};

const answersOf = (words: (typeof ROUTE_WORDS)[string] | undefined, schema: JsonObject) => {
  const hasBody = schema['body'] !== undefined || words?.body !== undefined;
  const asked = schema['params'] !== undefined || schema['querystring'] !== undefined;
  const common = [
    ...(hasBody || asked ? [400] : []),
    401,
    403,
    ...(hasBody ? [413, 415] : []),
    500,
  ];
  const statuses = [...new Set([...common, ...(words?.problems ?? [])])].toSorted((a, b) => a - b);
  const content = { 'application/problem+json': { schema: ref('Problem') } };
  return {
    200: { description: 'As asked.', content: contentOf(words?.answer) },
    ...Object.fromEntries(
      statuses.map((status) => [status, { description: PROBLEMS[status] ?? '', content }]),
    ),
  };
};

const contentOf = (answer: (typeof ROUTE_WORDS)[string]['answer'] | undefined): JsonObject => {
  if (answer === undefined) return {};
  if (typeof answer === 'string') {
    const page = { 'application/json': { schema: ref(answer) } };
    return answer === 'Events' ? { ...page, 'text/event-stream': { schema: TEXT } } : page;
  }
  if ('media' in answer) return { [answer.media]: { schema: TEXT } };
  const document = { anyOf: KINDS.map((kind) => ref(nameOfKind(kind))) };
  const more = { type: 'object', required: ['document'], properties: { document } };
  return { 'application/json': { schema: { allOf: [ref('DocumentSummary'), more] } } };
};

const TEXT: JsonObject = { type: 'string' };
