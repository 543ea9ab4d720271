/**
 * The two cookies of a device: the sign-in, and the mark by which it is known again. No script
 * reads them, no other site makes a browser send them, and over TLS nothing else may set them.
 */
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { SignedIn } from '../auth/index.ts';

type CookieName = 'session' | 'device';

const isSecure = (request: FastifyRequest): boolean => request.protocol === 'https';

/** A browser takes `__Host-` from this very host only, over TLS, for all its paths. */
const fullName = (request: FastifyRequest, name: CookieName): string =>
  `${isSecure(request) ? '__Host-' : ''}counterpoise-${name}`;

/** No token is longer; what is, was not given by us. */
const TOKEN = /^[\w-]{43}$/;

export const cookieOf = (request: FastifyRequest, name: CookieName): string | null => {
  const wanted = `${fullName(request, name)}=`;
  const found = (request.headers.cookie ?? '')
    .split(';')
    .map((each) => each.trim())
    .find((each) => each.startsWith(wanted));
  const token = found?.slice(wanted.length) ?? '';
  return TOKEN.test(token) ? token : null;
};

const cookie = (
  request: FastifyRequest,
  name: CookieName,
  token: string,
  lifeSeconds: number,
): string =>
  [
    `${fullName(request, name)}=${token}`,
    'Path=/',
    'HttpOnly',
    'SameSite=Strict',
    `Max-Age=${Math.max(0, Math.floor(lifeSeconds))}`,
    ...(isSecure(request) ? ['Secure'] : []),
  ].join('; ');

type Setting = { readonly request: FastifyRequest; readonly reply: FastifyReply };

export const setSignedIn = (
  { request, reply }: Setting,
  signedIn: SignedIn,
  nowMs: number,
): void => {
  const { session, expiresAtMs, device, deviceExpiresAtMs } = signedIn;
  reply.header('set-cookie', [
    cookie(request, 'session', session, (expiresAtMs - nowMs) / 1000),
    cookie(request, 'device', device, (deviceExpiresAtMs - nowMs) / 1000),
  ]);
};

/** The same sign-in under another token. The server ends it; the browser may keep it so long. */
const WEEK_SECONDS = 7 * 24 * 60 * 60;

export const setSession = ({ request, reply }: Setting, token: string): void => {
  reply.header('set-cookie', cookie(request, 'session', token, WEEK_SECONDS));
};

export const dropSession = ({ request, reply }: Setting): void => {
  reply.header('set-cookie', cookie(request, 'session', '', 0));
};
