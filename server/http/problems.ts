import type { FastifyReply } from 'fastify';
import type { Refusal } from '#outcome';
import { SERVER_REFUSALS } from '../refusal-codes.ts';

/** A refused request in the form of RFC 9457 (problem details), with the faults found. */
export const problem = (
  reply: FastifyReply,
  status: number,
  title: string,
  more: {
    /** Where a program tells it from others of the same status. */
    readonly type?: string;
    readonly detail?: string;
    readonly refusals?: readonly Refusal[];
    current?: unknown;
    /** Of a command: the answer that it has for good. */
    readonly answer?: unknown;
  } = {},
): FastifyReply =>
  reply
    .code(status)
    .type('application/problem+json')
    .send({ type: 'about:blank', title, status, ...more });

export const refusal = (
  name: keyof typeof SERVER_REFUSALS,
  { path = '', found, accepted }: Omit<Refusal, 'code' | 'path'> & { readonly path?: string },
): Refusal => ({ code: SERVER_REFUSALS[name].code, path, found, accepted });
