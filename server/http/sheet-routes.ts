import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { readHouse, readShow, readState } from '#documents';
import { fetchTongue } from '#languages';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { csvOf, fileNameOf, localMoment, type Paper, renderPdf } from '#print';
import {
  answerCode,
  type Sheet,
  type SheetContext,
  sheetContext,
  sheetIds,
  sheetOf,
} from '#sheets';
import type { HouseNow } from '#state';
import { LANGUAGES, type Language } from '#texts';
import type { CallRoom } from '../live/index.ts';
import type { AppParts } from './app-parts.ts';
import { problem } from './problems.ts';
import { nameFor } from './rights.ts';

type Job = {
  readonly house: string;
  readonly show: string;
  readonly by?: string;
  /** Of the print; absent is the one that the house prints in. */
  readonly language?: Language;
};
type Asked = Job & { readonly sheet: string };

const NAME = { type: 'string', minLength: 1, maxLength: 80 } as const;
const JOB = {
  house: NAME,
  show: NAME,
  by: { type: 'string', maxLength: 80 },
  language: { enum: LANGUAGES.map(({ language }) => language) },
} as const;

const queryOf = (properties: Record<string, unknown>, required: readonly string[]) => ({
  schema: {
    querystring: { type: 'object', required, additionalProperties: false, properties },
  },
});

/** A sheet says who printed it: who signed in, whatever name the page sends. */
const inOwnName = <Q extends Job>(request: FastifyRequest<{ Querystring: Q }>): Q => {
  const by = nameFor(request);
  // The types of the framework say less of a query than its schema does.
  const query = request.query as Q;
  return by === null ? query : { ...query, by };
};

/** Sheets of the documents as they are now: which there are, each as PDF or CSV, and their code. */
export const sheetRoutes = (
  app: FastifyInstance,
  parts: AppParts & { readonly room: CallRoom },
): void => {
  const contextOf = contextKeeper(parts);
  app.get<{ Querystring: Job }>(
    '/api/sheets',
    queryOf(JOB, ['house', 'show']),
    async (request, reply) => {
      const context = contextOf(request.query);
      return context.ok ? { sheets: sheetIds(context.value) } : noContext(reply, context.error);
    },
  );

  app.get<{ Querystring: Asked & { readonly paper: Paper } }>(
    '/api/sheet.pdf',
    queryOf({ ...JOB, sheet: NAME, paper: { enum: ['letter', 'a4'] } }, [
      'house',
      'show',
      'sheet',
      'paper',
    ]),
    async (request, reply) => {
      const sheet = await askedSheet(contextOf, inOwnName(request), reply);
      if (sheet === null) return reply;
      const bytes = await renderPdf(sheet, request.query.paper);
      return sent(reply, sheet, 'pdf').type('application/pdf').send(Buffer.from(bytes));
    },
  );

  app.get<{ Querystring: Asked }>(
    '/api/sheet.csv',
    queryOf({ ...JOB, sheet: NAME }, ['house', 'show', 'sheet']),
    async (request, reply) => {
      const sheet = await askedSheet(contextOf, inOwnName(request), reply);
      if (sheet === null) return reply;
      const text = csvOf(sheet);
      if (text === null) return problem(reply, 404, 'This sheet has no table.');
      return sent(reply, sheet, 'csv').type('text/csv; charset=utf-8').send(text);
    },
  );

  app.get<{ Querystring: Asked & { readonly code: string } }>(
    '/api/sheet-code',
    queryOf({ ...JOB, sheet: NAME, code: NAME }, ['house', 'show', 'sheet', 'code']),
    async (request, reply) => {
      const context = contextOf(request.query);
      if (!context.ok) return noContext(reply, context.error);
      return { answer: answerCode(context.value, request.query.sheet, request.query.code) };
    },
  );
};

const noContext = (reply: FastifyReply, { status, title, refusals }: NoContext): FastifyReply =>
  problem(reply, status, title, refusals.length === 0 ? {} : { refusals });

const sent = (reply: FastifyReply, sheet: Sheet, extension: 'pdf' | 'csv'): FastifyReply =>
  reply.header('content-disposition', `inline; filename="${fileNameOf(sheet, extension)}"`);

/** In the language that is asked for, else in that of the house. */
const spoken = async (context: SheetContext, language: Language | undefined) => {
  const tongue = await fetchTongue(language ?? context.house.language ?? 'en');
  return { ...context, house: { ...context.house, tongue } };
};

const askedSheet = async (
  contextOf: ContextOf,
  asked: Asked,
  reply: FastifyReply,
): Promise<Sheet | null> => {
  const context = contextOf(asked);
  if (!context.ok) {
    noContext(reply, context.error);
    return null;
  }
  const sheet = sheetOf(await spoken(context.value, asked.language), asked.sheet);
  if (sheet !== undefined) return sheet;
  problem(reply, 404, 'There is no such sheet.', { detail: sheetIds(context.value).join(', ') });
  return null;
};

type ContextOf = (job: Job) => Result<SheetContext, NoContext>;

/**
 * The documents in hand, worked through once. A document that is there and not understood is said
 * with its faults: a sheet without it would look as if nothing had been recorded. Orders of work
 * that were found are kept while the documents are the same, since some take seconds to find.
 */
const contextKeeper = ({
  databases,
  now,
  selfCheck,
  room,
}: AppParts & { readonly room: CallRoom }): ContextOf => {
  let kept: { readonly of: string; readonly orders: SheetContext['orders'] } | null = null;
  return (job) => {
    const store = databases.store();
    const houseText = store.current(`house:${job.house}`);
    const showText = store.current(`show:${job.show}`);
    if (houseText === null || showText === null) return fail(NO_JOB);
    const stateText = store.current(`state:${job.house}`);
    const read = documentsOf(houseText.text, showText.text, stateText?.text ?? null);
    if (!read.ok) return read;
    const { house, show, state } = read.value;
    const moment = now();
    const stamp = {
      revision: `house ${houseText.revision}, show ${showText.revision}`,
      printedAt: localMoment(moment),
      printedBy: job.by ?? 'not named',
    };
    const round = { clockMs: moment.getTime(), stamp, selfCheck: selfCheck.record() };
    const context = sheetContext(house, show, state, round);
    const of = [houseText.text, showText.text, stateText?.text ?? ''].join('\n');
    if (kept?.of !== of) kept = { of, orders: context.orders };
    const more = { now: callOf(room, job), people: namesOf(databases) };
    const { orders } = kept;
    return ok({ ...context, ...more, ...(orders === undefined ? {} : { orders }) });
  };
};

/** The call of this very show, while it runs. */
const callOf = (room: CallRoom, { house, show }: Job): HouseNow | null => {
  const stands = room.now();
  const { call } = stands;
  return call !== null && call.house === house && call.show === show ? stands : null;
};

const namesOf = (databases: AppParts['databases']): Readonly<Record<string, string>> =>
  Object.fromEntries(
    databases
      .auth()
      .people()
      .map(({ id, name }) => [id, name]),
  );

type Read = {
  readonly house: SheetContext['house'];
  readonly show: NonNullable<SheetContext['show']>;
  readonly state: SheetContext['state'];
};

const documentsOf = (
  houseText: string,
  showText: string,
  stateText: string | null,
): Result<Read, NoContext> => {
  const house = readHouse(houseText);
  if (!house.ok) return fail(notUnderstood('house', house.error));
  const plant = house.value.house;
  const show = readShow(showText, plant);
  if (!show.ok) return fail(notUnderstood('show', show.error));
  const state = stateText === null ? null : readState(stateText, plant);
  if (state !== null && !state.ok) return fail(notUnderstood('record', state.error));
  return ok({ house: plant, show: show.value.show, state: state?.value.state ?? null });
};

type NoContext = {
  readonly status: 404 | 422;
  readonly title: string;
  readonly refusals: readonly Refusal[];
};

const NO_JOB: NoContext = {
  status: 404,
  title: 'There is no such house with such a show.',
  refusals: [],
};

const notUnderstood = (
  name: 'house' | 'show' | 'record',
  refusals: readonly Refusal[],
): NoContext => ({
  status: 422,
  title: `The ${name} is not understood as it is now; no sheet is made of it.`,
  refusals,
});
