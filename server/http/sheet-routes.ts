import type { FastifyInstance, FastifyReply } from 'fastify';
import { assess } from '#assessment';
import { readHouse, readShow, readState } from '#documents';
import { csvOf, type Paper, renderPdf } from '#print';
import { judge } from '#rules';
import { answerCode, type Sheet, type SheetContext, sheetIds, sheetOf } from '#sheets';
import type { DocumentStore } from '../log/index.ts';
import type { AppParts } from './app-parts.ts';
import { problem } from './problems.ts';

type Job = { readonly house: string; readonly show: string; readonly by?: string };
type Asked = Job & { readonly sheet: string };

const NAME = { type: 'string', minLength: 1, maxLength: 80 } as const;
const JOB = { house: NAME, show: NAME, by: { type: 'string', maxLength: 80 } } as const;

const queryOf = (properties: Record<string, unknown>, required: readonly string[]) => ({
  schema: {
    querystring: { type: 'object', required, additionalProperties: false, properties },
  },
});

/** Sheets of the documents as they are now: which there are, each as PDF or CSV, and their code. */
export const sheetRoutes = (app: FastifyInstance, parts: AppParts): void => {
  app.get<{ Querystring: Job }>(
    '/api/sheets',
    queryOf(JOB, ['house', 'show']),
    async (request, reply) => {
      const context = contextOf(parts, request.query);
      return context === null ? noJob(reply) : { sheets: sheetIds(context) };
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
      const sheet = askedSheet(parts, request.query, reply);
      if (sheet === null) return reply;
      const bytes = await renderPdf(sheet, request.query.paper);
      return sent(reply, sheet, 'pdf').type('application/pdf').send(Buffer.from(bytes));
    },
  );

  app.get<{ Querystring: Asked }>(
    '/api/sheet.csv',
    queryOf({ ...JOB, sheet: NAME }, ['house', 'show', 'sheet']),
    async (request, reply) => {
      const sheet = askedSheet(parts, request.query, reply);
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
      const context = contextOf(parts, request.query);
      if (context === null) return noJob(reply);
      return { answer: answerCode(context, request.query.sheet, request.query.code) };
    },
  );
};

const noJob = (reply: FastifyReply): FastifyReply =>
  problem(reply, 404, 'There is no such house with such a show.');

const sent = (reply: FastifyReply, { id }: Sheet, extension: string): FastifyReply => {
  const name = `${id.replaceAll('/', '-')}.${extension}`;
  return reply.header('content-disposition', `inline; filename="${name}"`);
};

const askedSheet = (parts: AppParts, asked: Asked, reply: FastifyReply): Sheet | null => {
  const context = contextOf(parts, asked);
  if (context === null) {
    noJob(reply);
    return null;
  }
  const sheet = sheetOf(context, asked.sheet);
  if (sheet !== undefined) return sheet;
  problem(reply, 404, 'There is no such sheet.', { detail: sheetIds(context).join(', ') });
  return null;
};

/** The documents in hand, worked through once; null where house or show is not there. */
const contextOf = ({ databases, now }: AppParts, job: Job): SheetContext | null => {
  const store = databases.store();
  const houseText = store.current(`house:${job.house}`);
  const showText = store.current(`show:${job.show}`);
  if (houseText === null || showText === null) return null;
  const house = readHouse(houseText.text);
  const show = readShow(showText.text, house.ok ? house.value.house : undefined);
  if (!house.ok || !show.ok) return null;
  const state = stateOf(store, job);
  const read = { house: house.value.house, show: show.value.show, state };
  const assessment = assess(read.house, read.show, state);
  const moment = now();
  return {
    ...read,
    assessment,
    findings: judge(read.house, read.show, state, assessment, { nowMs: moment.getTime() }),
    stamp: {
      revision: `house ${houseText.revision}, show ${showText.revision}`,
      printedAt: moment.toISOString(),
      printedBy: job.by ?? 'not named',
    },
  };
};

const stateOf = (store: DocumentStore, { house }: Job): SheetContext['state'] => {
  const stored = store.current(`state:${house}`);
  if (stored === null) return null;
  const state = readState(stored.text);
  return state.ok ? state.value.state : null;
};
