import { describe, expect, it } from 'vitest';
import { type Address, readAddress, writeAddress } from './address.ts';

const there = (url: string): Address => {
  const { pathname, search } = new URL(url, 'http://house.test');
  return readAddress(pathname, search);
};

describe('address', () => {
  it.each([
    '/hang-list',
    '/set/11',
    '/set/D3?house=kestlemere&show=vell',
    '/set/A%2FB',
    '/order/9',
    '/order/9?job=strike&from=recorded&house=kestlemere&show=vell',
    '/sheets',
    '/sheets/balance-card/11?house=kestlemere',
    '/which-set',
    '/which-set?piece=A%2FB&house=kestlemere',
    '/set/11/what-if?if=%5B%5D&house=kestlemere',
    '/set/11/beside',
    '/set/11/beside?other=36&otherShow=vell&otherHouse=kestlemere&otherRevision=3&show=vell',
    '/another-house?to=skelderwick&moved=9%3E12%2C11%3E&house=kestlemere',
    '/self-check',
    '/this-server',
    '/people',
    '/people/sign-in?house=kestlemere',
    '/people/owner',
    '/join',
    '/people/devices',
    '/people/programs',
    '/house?house=skelderwick&show=regatta',
    '/house?at=trim%3Aplaying',
    '/house/plan?at=cue%3A5&show=vell',
    '/house/limits',
    '/house/enter',
    '/house/enter/rules?field=rules.lockLimit&house=kestlemere',
    '/house/found/D1?house=kestlemere',
    '/live',
    '/drill?house=kestlemere',
    '/live/post/gallery%3Amid',
    '/documents',
    '/documents/bring-in?show=vell',
    '/documents/take-out?at=trim%3Aplaying&house=kestlemere',
    '/documents/show%3Avell?older=3&newer=5&house=kestlemere',
  ])('comes back as it was: %s', (url) => {
    expect(writeAddress(there(url))).toBe(url);
  });

  it('opens the hang list where the address says nothing', () => {
    expect(there('/').place).toEqual({ kind: 'hangList' });
  });

  it('says that it does not know a place, instead of showing another', () => {
    expect(there('/set').place).toEqual({ kind: 'nowhere', path: '/set' });
    expect(there('/house/cellar').place).toEqual({ kind: 'nowhere', path: '/house/cellar' });
    expect(there('/house/plan/deck').place).toEqual({ kind: 'nowhere', path: '/house/plan/deck' });
    expect(there('/set/11/below').place).toEqual({ kind: 'nowhere', path: '/set/11/below' });
    expect(there('/cues').place).toEqual({ kind: 'nowhere', path: '/cues' });
  });

  it('leaves a job or a start open that it does not know', () => {
    const place = { kind: 'order', set: '9', job: null, from: null };
    expect(there('/order/9?job=juggle&from=here').place).toEqual(place);
    expect(there('/order').place).toEqual({ kind: 'nowhere', path: '/order' });
  });

  it('leaves revisions open that are none, and knows no documents without a kind', () => {
    expect(there('/documents/show:vell?older=last&newer=0').place).toEqual({
      kind: 'documents',
      document: 'show:vell',
      older: null,
      newer: null,
    });
    expect(there('/documents/cellar').place).toEqual({
      kind: 'nowhere',
      path: '/documents/cellar',
    });
  });

  it('keeps a broken escape as it was typed', () => {
    expect(there('/set/%zz').place).toEqual({ kind: 'set', set: '%zz' });
  });
});
