/** Joining a call: a code for one post, and taking the post with it. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { CallNow, PostId } from '#state';
import { byOf, mayDo, type Who } from '../auth/index.ts';
import { areTwoPeople, postsOf } from '../live/index.ts';
import { refuse } from './access-answers.ts';
import { type CallParts, headFlyIn, noCall, notForThem, notSignedOff } from './call-answers.ts';
import { documentsOfCall } from './call-documents.ts';
import { CALL_DEVICE, hasPart, recordOf, sayIn } from './call-parts.ts';
import { problem, refusal } from './problems.ts';
import { nameFor, whoOf } from './rights.ts';
import { bodyOf, comingOf, NAME } from './session-routes.ts';

const POST = { type: 'string', minLength: 1, maxLength: 80 } as const;
/** As a person types it, with spaces and dashes. */
const CODE = { type: 'string', minLength: 1, maxLength: 40 } as const;

export const joiningRoutes = (app: FastifyInstance, parts: CallParts): void => {
  codeRoute(app, parts);
  joinRoute(app, parts);
};

type Give = { readonly post: PostId; readonly answersFor: boolean };

const codeRoute = (app: FastifyInstance, parts: CallParts): void => {
  const { room, databases } = parts;
  app.post<{ Body: Give }>(
    '/api/call/codes',
    { schema: { body: bodyOf({ post: POST, answersFor: { type: 'boolean' } }) } },
    async (request, reply) => {
      const who = whoOf(request);
      if (!hasPart(who, databases.auth().hasOwner())) return notForThem(reply, who);
      const standing = room.now();
      const { call } = standing;
      if (call === null) return noCall(reply);
      const { post, answersFor } = request.body;
      const house = documentsOfCall(databases.store(), call)?.house;
      const known = house === undefined ? [] : postsOf(house);
      if (!known.includes(post)) {
        const refusals = [refusal('noSuchPost', { found: post, accepted: known.join(', ') })];
        return problem(reply, 422, 'There is no such post.', { refusals });
      }
      const headFly = headFlyIn(standing);
      const isHeadFly = headFly !== null && headFly.by === byOf(who);
      // Nobody answers for the head flyman: that post is taken by who is signed off for it.
      if (answersFor && (!isHeadFly || post === 'headFly')) {
        return notAtHeadFly(reply, post === 'headFly' ? 'the post itself' : 'somebody else');
      }
      const unsigned = answersFor ? notSignedOff(reply, parts, who, 'headFly') : null;
      if (unsigned !== null) return unsigned;
      const given = databases.auth().giveCallCode({
        ...{ call: call.id, post },
        answersBy: answersFor ? byOf(who) : null,
        answersName: answersFor ? (headFly?.name ?? null) : null,
      });
      if (!given.ok) return refuse(reply, given.error);
      const { code, expiresAtMs } = given.value;
      // After the sign #, which no browser sends and no log keeps.
      return { code, link: `/live/join#${code}`, expiresMs: expiresAtMs };
    },
  );
};

const notAtHeadFly = (reply: FastifyReply, found: string): FastifyReply =>
  problem(reply, 403, 'Only the head flyman of this call answers for somebody.', {
    refusals: [refusal('notAtHeadFly', { found, accepted: 'who stands as head flyman' })],
  });

type Join = { readonly code: string; readonly device: string; readonly name: string };

const joinRoute = (app: FastifyInstance, parts: CallParts): void => {
  const { room, databases, now } = parts;
  app.post<{ Body: Join }>(
    '/api/call/join',
    { schema: { body: bodyOf({ code: CODE, device: CALL_DEVICE, name: NAME }) } },
    async (request, reply) => {
      const who = whoOf(request);
      const auth = databases.auth();
      if (!hasPart(who, auth.hasOwner())) return notForThem(reply, who);
      const { call } = room.now();
      if (call === null) return noCall(reply);
      const { code, device: client, name } = request.body;
      const { address } = comingOf(request, undefined);
      const found = auth.callCodeBy(who, { typed: code, call: call.id, address });
      if (!found.ok) return refuse(reply, found.error);
      const { post, answersBy, answersName: answeredBy } = found.value;
      const against = againstJoining(request, reply, {
        parts,
        call,
        post,
        isAnswered: answeredBy !== null,
        client,
      });
      if (against !== null) return against;
      const payload = { call: call.id, post, name: nameFor(request) ?? name, answeredBy };
      // Read before the act: within it nothing is folded that may be taken back.
      const [before, desk] = [room.now(), room.desk()];
      const say = (): void =>
        sayIn(
          recordOf(databases),
          [{ kind: 'post taken', target: 'house', payload }],
          { who, nowMs: now().getTime(), device: client },
          (event) => desk?.follow(before, event) ?? [],
        );
      const seat = { call: call.id, post, client, answersBy };
      const done = auth.takeSeat(who, seat, { code, say });
      return done.ok ? { call: call.id, post, answeredBy } : refuse(reply, done.error);
    },
  );
};

type Joining = {
  readonly parts: CallParts;
  readonly call: CallNow;
  readonly post: PostId;
  readonly isAnswered: boolean;
  readonly client: string;
};

/** What stands against this person at this post on this device; the code stays good for another. */
const againstJoining = (
  request: FastifyRequest,
  reply: FastifyReply,
  { parts, call, post, isAnswered, client }: Joining,
): FastifyReply | null => {
  const who = whoOf(request);
  // A caller says and asks nothing; every other post asks leave, or is asked as the second.
  if (post !== 'caller' && !mayDo(who, 'run')) {
    const found = who.kind === 'person' ? `the role ${who.role}` : who.kind;
    return refuse(reply, { name: 'role', found, accepted: 'the right to run' });
  }
  const auth = parts.databases.auth();
  if (!auth.isOwnClient(who, { call: call.id, client })) {
    const refusals = [refusal('deviceOfOther', { found: client, accepted: 'an id of its own' })];
    return problem(reply, 409, 'This id belongs to another device of the call.', { refusals });
  }
  const other = postOfTwo(who, parts, call.id, post);
  if (other !== null) {
    const accepted = 'another person on another device';
    const refusals = [
      refusal('twoPeople', { path: post, found: `held beside ${other}`, accepted }),
    ];
    return problem(reply, 409, 'These two posts are two people.', { refusals });
  }
  return isAnswered ? null : notSignedOff(reply, parts, who, post);
};

/**
 * A post that they, or their device whoever was signed in on it, hold already and that is another
 * person's beside this one. Where nobody has a name it cannot be told; there a second is on paper.
 */
const postOfTwo = (
  who: Who,
  { room, databases }: CallParts,
  call: string,
  post: PostId,
): PostId | null => {
  if (who.kind !== 'person') return null;
  const here = new Set(databases.auth().postsOnDevice(who, call));
  const held = Object.entries(room.now().posts).filter(
    ([each, { by }]) => each !== post && (by === who.id || here.has(each)),
  );
  return held.find(([each]) => areTwoPeople(each, post))?.[0] ?? null;
};
