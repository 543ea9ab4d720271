/** A refusal of `auth` as an answer: its status, its code, and how long to wait. */
import type { FastifyReply } from 'fastify';
import type { Refusal } from '#outcome';
import { ACCESS_REFUSALS, type AccessRefusal, type AccessRefusalName } from '../auth/index.ts';
import { problem } from './problems.ts';

const STATUS: Readonly<Record<AccessRefusalName, number>> = {
  nobody: 401,
  role: 403,
  noRight: 403,
  wrong: 401,
  wait: 429,
  pinLocked: 403,
  proofNeeded: 403,
  link: 404,
  nameTaken: 409,
  weakSecret: 422,
  lastOwner: 409,
  noSuch: 404,
  notAbove: 403,
  lapse: 422,
  busy: 503,
  ownerMade: 403,
  tooMany: 409,
  foreignPage: 403,
  callCode: 404,
};

export const refuse = (
  reply: FastifyReply,
  { name, found, accepted, waitMs }: AccessRefusal,
): FastifyReply => {
  const { code, title } = ACCESS_REFUSALS[name];
  const refusals: readonly Refusal[] = [{ code, path: '', found, accepted }];
  if (waitMs !== undefined) reply.header('retry-after', Math.ceil(waitMs / 1000));
  return problem(reply, STATUS[name], title, { refusals });
};
