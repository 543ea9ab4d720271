import type { FastifyInstance, FastifyReply } from 'fastify';
import { loopbackListening, TRUST_PATHS, trustAnswer } from '../lan/index.ts';
import type { AppParts } from './app-parts.ts';
import { problem } from './problems.ts';

/** The page on plain HTTP is of another origin, and asks for a part of this one to be answered. */
const openToOthers = async (_request: unknown, reply: FastifyReply): Promise<void> => {
  reply.header('cross-origin-resource-policy', 'cross-origin');
};

/** The page on trust over HTTPS: whoever reads it here without a warning trusts the server. */
export const trustRoutes = (app: FastifyInstance, parts: AppParts): void => {
  const { listening = loopbackListening() } = parts;
  for (const path of Object.values(TRUST_PATHS)) {
    app.get(path, { onSend: openToOthers }, async (request, reply) => {
      const acceptLanguage = request.headers['accept-language'];
      const answer = await trustAnswer(listening, {
        path,
        acceptLanguage,
        isSecure: true,
        host: request.host,
      });
      if (answer === null) return problem(reply, 404, 'There is nothing here.');
      return reply.headers(answer.headers).type(answer.type).send(answer.body);
    });
  }
};
