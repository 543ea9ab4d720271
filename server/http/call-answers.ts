/** Why a call is not opened, closed or joined by who asks, as answers of several routes. */
import type { FastifyReply } from 'fastify';
import { isSignedOff, taskOf } from '#call';
import type { HouseNow, PostId, PostNow } from '#state';
import type { Who } from '../auth/index.ts';
import type { Databases } from '../databases.ts';
import type { CallRoom } from '../live/index.ts';
import { refuse } from './access-answers.ts';
import type { AppParts } from './app-parts.ts';
import { problem, refusal } from './problems.ts';

export type CallParts = AppParts & { readonly room: CallRoom };

export const headFlyIn = ({ posts }: HouseNow): PostNow | null =>
  new Map(Object.entries(posts)).get('headFly') ?? null;

export const noCall = (reply: FastifyReply): FastifyReply =>
  problem(reply, 409, 'No call is open.', {
    refusals: [refusal('noCall', { found: 'no open call', accepted: 'open one first' })],
  });

/** A program has no part in a call, nor has a machine without a name where people have names. */
export const notForThem = (reply: FastifyReply, who: Who): FastifyReply =>
  refuse(reply, {
    name: 'role',
    found: who.kind === 'program' ? 'a program' : 'a machine that is kept open without a name',
    accepted: 'a person who has signed in',
  });

/** Null where they are signed off for the post at this moment, or nobody here has a name. */
export const notSignedOff = (
  reply: FastifyReply,
  { databases }: { readonly databases: Databases },
  who: Who,
  post: PostId,
): FastifyReply | null => {
  if (who.kind !== 'person' || isSignedOff(databases.auth().tasksOf(who.id), post)) return null;
  const accepted = `a person signed off for ${taskOf(post)}, or higher`;
  return problem(reply, 403, 'This post needs a sign-off that you do not hold.', {
    refusals: [refusal('notSignedOff', { path: post, found: 'no such sign-off', accepted })],
  });
};
