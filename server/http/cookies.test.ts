/** Over TLS a cookie is one that no other host and no plain page can set or read. */
import Fastify from 'fastify';
import { expect, it } from 'vitest';
import { cookieOf, dropSession, setSession } from './cookies.ts';

const token = 'A'.repeat(43);

const appOf = () => {
  // Here what stands in between says which scheme it was: TLS without a certificate of the test.
  const app = Fastify({ trustProxy: true });
  app.get('/in', async (request, reply) => {
    setSession({ request, reply }, token);
    return {};
  });
  app.get('/out', async (request, reply) => {
    dropSession({ request, reply });
    return {};
  });
  app.get('/seen', async (request) => ({ seen: cookieOf(request, 'session') }));
  return app;
};

const ATTRIBUTES = 'Path=/; HttpOnly; SameSite=Strict; Max-Age=604800';
const secure = { 'x-forwarded-proto': 'https' };

it('is Secure and of this host alone over TLS, and plain without', async () => {
  const app = appOf();
  const overTls = await app.inject({ url: '/in', headers: secure });
  expect(overTls.headers['set-cookie']).toBe(
    `__Host-counterpoise-session=${token}; ${ATTRIBUTES}; Secure`,
  );
  const plain = await app.inject({ url: '/in' });
  expect(plain.headers['set-cookie']).toBe(`counterpoise-session=${token}; ${ATTRIBUTES}`);
  const out = await app.inject({ url: '/out', headers: secure });
  expect(out.headers['set-cookie']).toMatch(/^__Host-counterpoise-session=; .*Max-Age=0; Secure$/);
});

it('that was set without TLS is not taken over TLS', async () => {
  const app = appOf();
  const seen = async (headers: Record<string, string>) =>
    (await app.inject({ url: '/seen', headers })).json().seen;
  const plain = `other=1; counterpoise-session=${token}`;
  expect(await seen({ cookie: plain })).toBe(token);
  expect(await seen({ ...secure, cookie: plain })).toBeNull();
  expect(await seen({ ...secure, cookie: `__Host-counterpoise-session=${token}` })).toBe(token);
  for (const cookie of ['', 'counterpoise-session', `counterpoise-session=${token}x`]) {
    expect(await seen({ cookie }), cookie).toBeNull();
  }
});
