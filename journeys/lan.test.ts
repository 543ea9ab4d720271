/** A tablet comes to a server on the LAN: it does not trust it, reads how, and then does. */
import { createHash, X509Certificate } from 'node:crypto';
import { connect } from 'node:tls';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALL, violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage, WIDTHS } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { tooWide } from './views.ts';

let server: HouseServer;
let strange: Browser;
let trusting: Browser;
let certificate: X509Certificate;
let trustPage = '';

const shownBy = (address: string): Promise<X509Certificate> =>
  new Promise((resolve, reject) => {
    const { hostname: host, port } = new URL(address);
    const socket = connect({ host, port: Number(port), rejectUnauthorized: false }, () => {
      resolve(new X509Certificate(socket.getPeerCertificate().raw));
      socket.end();
    }).once('error', reject);
  });

beforeAll(async () => {
  server = await startHouseServer({ COUNTERPOISE_LAN: '1' });
  certificate = await shownBy(server.address);
  const key = certificate.publicKey.export({ type: 'spki', format: 'der' });
  const print = createHash('sha256').update(key).digest('base64');
  strange = await openBrowser();
  // The browser takes this one certificate, as it does once a person has installed its authority.
  trusting = await openBrowser([`--ignore-certificate-errors-spki-list=${print}`]);
});
afterAll(async () => {
  await Promise.all([strange?.close(), trusting?.close()]);
  await server.stop();
});

const checked = async (page: Page): Promise<string> => {
  await page.goto(trustPage);
  await page.getByRole('button', { name: 'Check whether this device trusts it' }).click();
  await expect.poll(() => page.locator('#checked').textContent()).toMatch(/This device/);
  return (await page.locator('#checked').textContent()) ?? '';
};

describe('a server on the LAN', () => {
  it('is on HTTPS with HTTP/2, and says on its screen where it is and whose', async () => {
    const page = await openPage(trusting, server.address, { selfCheck: 'never' });
    await goTo(page, '/this-server');
    await expect.poll(() => page.locator('main').textContent()).toContain('by its own authority');
    const protocol = await page.evaluate(() => {
      const [entry] = performance.getEntriesByType('navigation');
      return (entry as PerformanceNavigationTiming | undefined)?.nextHopProtocol;
    });
    expect(protocol).toBe('h2');
    expect(await page.evaluate(() => isSecureContext)).toBe(true);
    const links = await page
      .getByRole('link')
      .evaluateAll((all) => all.map((each) => each.getAttribute('href')));
    trustPage = links.find((href) => href?.endsWith('/trust')) ?? '';
    expect(trustPage).toMatch(/^http:\/\/[^/]+:\d+\/trust$/);
    await page.context().close();
  });

  it('is not opened by a device that does not trust it', async () => {
    const page = await openPage(strange, server.address);
    await expect(page.goto('/')).rejects.toThrow(/CERT_AUTHORITY_INVALID/);
    await page.context().close();
  });

  it('tells that device so, on a page that any device can read', async () => {
    const page = await openPage(strange, server.address);
    expect(await checked(page)).toContain('does not trust the server yet');
    const shown = (await page.locator('code').textContent()) ?? '';
    const given = await (await page.request.get(`${trustPage}/counterpoise-authority.crt`)).text();
    const authority = new X509Certificate(given);
    expect(shown.replaceAll(/\s/g, '')).toBe(authority.fingerprint256.replaceAll(':', ''));
    expect(certificate.verify(authority.publicKey)).toBe(true);
    await page.context().close();
  });

  it('tells a device that trusts it so', async () => {
    const page = await openPage(trusting, server.address);
    expect(await checked(page)).toContain('it trusts the server');
    await page.goto('/trust');
    expect(await page.locator('.notice').textContent()).toContain('This page came over HTTPS');
    await page.context().close();
  });

  it.each(WIDTHS)(
    'leads through trusting it at %i pixels, with nothing in the way',
    async (width) => {
      for (const light of ['day', 'dim'] as const) {
        const page = await openPage(strange, server.address, { width, light });
        await page.goto(trustPage);
        for (const summary of await page.locator('summary').all()) await summary.click();
        expect(await violationsOf(page, ALL)).toEqual([]);
        expect(await tooWide(page)).toBe(0);
        const small = await page
          .locator('a, button, summary')
          .evaluateAll((all) =>
            all
              .filter((each) => each.getBoundingClientRect().height < 48)
              .map((each) => each.textContent),
          );
        expect(small).toEqual([]);
        await page.context().close();
      }
    },
  );
});
