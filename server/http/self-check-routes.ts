import type { FastifyInstance } from 'fastify';
import { fileNameOf, localMoment, type Paper, renderPdf } from '#print';
import { selfCheckSheet } from '#sheets';
import type { AppParts } from './app-parts.ts';
import { nameFor } from './rights.ts';

type Asked = { readonly paper: Paper; readonly by?: string };

const ASKED = {
  schema: {
    querystring: {
      type: 'object',
      required: ['paper'],
      additionalProperties: false,
      properties: { paper: { enum: ['letter', 'a4'] }, by: { type: 'string', maxLength: 80 } },
    },
  },
};

/** How far the self-check of this server is and what it found; as a sheet it needs no house. */
export const selfCheckRoutes = (app: FastifyInstance, { selfCheck, now }: AppParts): void => {
  app.get('/api/self-check', async () => selfCheck.record());
  app.get<{ Querystring: Asked }>('/api/self-check.pdf', ASKED, async (request, reply) => {
    const { paper, by = 'not named' } = request.query;
    const stamp = { printedAt: localMoment(now()), printedBy: nameFor(request) ?? by };
    const sheet = selfCheckSheet(selfCheck.record(), stamp);
    const bytes = await renderPdf(sheet, paper);
    return reply
      .header('content-disposition', `inline; filename="${fileNameOf(sheet, 'pdf')}"`)
      .type('application/pdf')
      .send(Buffer.from(bytes));
  });
};
