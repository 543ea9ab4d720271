/**
 * What is answered to a device that does not trust the server yet: the page, the certificate, and
 * a script that checks. The same over HTTPS as over plain HTTP, where there is nothing else.
 */
import { X509Certificate } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import { fetchTongue } from '#languages';
import { LANGUAGES, type Language } from '#texts';
import { fingerprintOf, type Listening } from './listening.ts';
import { isOwnHost } from './own-hosts.ts';
import { CHECK_SCRIPT, TRUST_PATHS, trustPage } from './trust-page.ts';

export type TrustAnswer = {
  readonly type: string;
  readonly body: string;
  readonly headers: Readonly<Record<string, string>>;
};

type Asked = {
  readonly path: string;
  readonly acceptLanguage: string | undefined;
  readonly isSecure: boolean;
  /** By which name or address the page was reached. */
  readonly host: string;
};

/** Null where nothing is at that path, or there is no own authority to trust. */
export const trustAnswer = async (
  listening: Listening,
  { path, acceptLanguage, isSecure, host }: Asked,
): Promise<TrustAnswer | null> => {
  const pem = listening.authorityPem();
  if (pem === null) return null;
  if (path === TRUST_PATHS.certificate) {
    const disposition = 'attachment; filename="counterpoise-authority.crt"';
    const headers = { 'content-disposition': disposition };
    return { type: 'application/x-x509-ca-cert', body: pem, headers };
  }
  if (path === TRUST_PATHS.check) {
    return { type: 'text/javascript; charset=utf-8', body: CHECK_SCRIPT, headers: {} };
  }
  if (path !== TRUST_PATHS.page) return null;
  const language = languageOfHeader(acceptLanguage);
  const body = trustPage({
    language,
    voice: { words: 'US', tongue: await fetchTongue(language) },
    authorityName: nameOf(pem),
    fingerprint: fingerprintOf(pem),
    urls: listening.urls(),
    checkUrl: sameHost(listening, host),
    isSecure,
  });
  return { type: 'text/html; charset=utf-8', body, headers: {} };
};

/** What is checked is the address by which this device does reach the server. */
const sameHost = (listening: Listening, host: string): string => {
  const urls = [...listening.urls(), listening.ownUrl];
  const name = host.replace(/:\d+$/, '').toLowerCase();
  return urls.find((url) => new URL(url).hostname === name) ?? listening.ownUrl;
};

const nameOf = (pem: string): string =>
  new X509Certificate(pem).subject.split('\n').at(-1)?.replace(/^CN=/, '') ?? '';

/** The first language of the device that there is a catalogue for. */
const languageOfHeader = (header = ''): Language => {
  const tags = header.split(',').map((part) => part.trim().slice(0, 2).toLowerCase());
  const known = tags.map((tag) => LANGUAGES.find(({ language }) => language === tag)?.language);
  return known.find((language) => language !== undefined) ?? 'en';
};

const HEADERS = (listening: Listening) => ({
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'unsafe-inline'; img-src 'self'; " +
    `connect-src ${[...listening.urls(), listening.ownUrl].join(' ')}; base-uri 'none'; ` +
    "frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
});

/** Plain HTTP on a port of its own: it reads no body, keeps nothing and changes nothing. */
export const trustServer = (listening: Listening): Server =>
  createServer({ requestTimeout: 10_000, maxHeaderSize: 8192 }, (request, reply) => {
    const { method = '', url = '', headers } = request;
    const send = (status: number, answer: TrustAnswer): void => {
      reply.writeHead(status, {
        'content-type': answer.type,
        ...answer.headers,
        ...HEADERS(listening),
      });
      reply.end(method === 'HEAD' ? undefined : answer.body);
    };
    const plain = (status: number, body: string, more: TrustAnswer['headers'] = {}): void =>
      send(status, { type: 'text/plain; charset=utf-8', body: `${body}\n`, headers: more });
    if (!isOwnHost(listening, headers.host)) {
      plain(403, 'This server answers only under its own addresses.');
      return;
    }
    if (method !== 'GET' && method !== 'HEAD') {
      plain(405, 'This address is read only.', { allow: 'GET, HEAD' });
      return;
    }
    const path = url.split('?')[0] ?? '';
    if (path === '/') {
      plain(302, 'See /trust', { location: TRUST_PATHS.page });
      return;
    }
    const asked = {
      path,
      acceptLanguage: headers['accept-language'],
      isSecure: false,
      host: headers.host ?? '',
    };
    trustAnswer(listening, asked).then(
      (answer) => {
        if (answer === null) plain(404, 'There is only /trust here.');
        else send(200, answer);
      },
      () => plain(500, 'A fault of the program.'),
    );
  });
