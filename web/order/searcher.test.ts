import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type SearchRequest, search } from './searcher.ts';

class SearchWorker extends EventTarget {
  static made: SearchWorker[] = [];
  isEnded = false;
  constructor() {
    super();
    SearchWorker.made.push(this);
  }
  postMessage = (): void => undefined;
  terminate = (): void => {
    this.isEnded = true;
  };
}

class Fault extends Event {
  readonly message: string;
  constructor(message: string) {
    super('error');
    this.message = message;
  }
}

const REQUEST = {} as SearchRequest;

beforeEach(() => {
  SearchWorker.made = [];
  vi.useFakeTimers();
  vi.stubGlobal('Worker', SearchWorker);
  vi.stubGlobal('ErrorEvent', Fault);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const heard = () => ({ onFound: vi.fn(), onFault: vi.fn() });

describe('a search for an order', () => {
  it('is begun again where its program could not be fetched, until it is given up', () => {
    const ears = heard();
    const giveUp = search(REQUEST, ears);
    SearchWorker.made[0]?.dispatchEvent(new Event('error'));
    expect(SearchWorker.made[0]?.isEnded).toBe(true);
    vi.advanceTimersByTime(2999);
    expect(SearchWorker.made).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(SearchWorker.made).toHaveLength(2);
    SearchWorker.made[1]?.dispatchEvent(new Event('error'));
    giveUp();
    vi.advanceTimersByTime(10_000);
    expect(SearchWorker.made).toHaveLength(2);
    expect(ears.onFault).not.toHaveBeenCalled();
  });

  it('ends with the fault of its program, which is none of the network', () => {
    const ears = heard();
    search(REQUEST, ears);
    SearchWorker.made[0]?.dispatchEvent(new Fault('a defect'));
    expect(ears.onFault.mock.calls[0]?.[0].message).toContain('a defect');
    vi.advanceTimersByTime(10_000);
    expect(SearchWorker.made).toHaveLength(1);
  });

  it('is ended when nobody waits for it any more', () => {
    search(REQUEST, heard())();
    expect(SearchWorker.made[0]?.isEnded).toBe(true);
  });
});
