import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { SHOW, stage, withMass } from '../keeping/stage-for-tests.ts';
import { MAY_I_LOAD } from './leaving.ts';
import { startOffline } from './start.ts';

type Call = (event: never) => void;

/** What a page has of its browser, as far as the start asks. */
const browser = (more: { readonly register?: () => Promise<unknown> } = {}) => {
  const heard = new Map<string, Call>();
  const update = vi.fn(async () => undefined);
  const register = vi.fn(more.register ?? (async () => ({ update })));
  const page = { visibilityState: 'visible', addEventListener: heard.set.bind(heard) };
  const serviceWorker = { register, addEventListener: heard.set.bind(heard) };
  const persist = vi.fn(async () => true);
  vi.stubGlobal('document', page);
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  vi.stubGlobal('navigator', { serviceWorker, storage: { persist } });
  const say = (kind: string, event: unknown): void => heard.get(kind)?.(event as never);
  return { page, register, update, persist, say };
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const start = async (isUnsaved = false) => {
  const { open, net } = stage();
  const keeper = await open();
  net.isUp = false;
  if (isUnsaved) keeper.edit(SHOW, withMass('70 lb'), 'mass');
  await startOffline({ state: keeper.state });
};

describe('the start of what needs no server', () => {
  it('asks for the worker at its one address, past every cache, and to be kept', async () => {
    const { register, persist } = browser();
    await start();
    expect(register.mock.calls).toEqual([['/sw.js', { updateViaCache: 'none' }]]);
    expect(persist).toHaveBeenCalledTimes(1);
  });

  it('looks for a newer one every hour and when the page is looked at again', async () => {
    const { update, page, say } = browser();
    await start();
    expect(update).toHaveBeenCalledTimes(0);
    vi.advanceTimersByTime(3 * 3_600_000);
    expect(update).toHaveBeenCalledTimes(3);
    say('visibilitychange', {});
    expect(update).toHaveBeenCalledTimes(4);
    page.visibilityState = 'hidden';
    say('visibilitychange', {});
    expect(update).toHaveBeenCalledTimes(4);
  });

  it.each([true, false])('answers the worker that goes whether it holds edits: %s', async (is) => {
    const { say } = browser();
    await start(is);
    const answers: unknown[] = [];
    const ports = [{ postMessage: (answer: unknown) => answers.push(answer) }];
    say('message', { data: MAY_I_LOAD, ports });
    say('message', { data: 'something of another program', ports });
    expect(answers).toEqual([is]);
  });

  it.each([
    ['refuses', async () => Promise.reject(new Error('not allowed'))],
    ['answers with nothing', async () => undefined],
  ])('goes on where the browser %s', async (_words, register) => {
    const { update } = browser({ register });
    await start();
    vi.advanceTimersByTime(3_600_000);
    expect(update).not.toHaveBeenCalled();
  });

  it('asks for nothing where there are no workers', async () => {
    vi.stubGlobal('navigator', {});
    await expect(start()).resolves.toBeUndefined();
  });
});
