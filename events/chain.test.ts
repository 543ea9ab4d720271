import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sealed, verifyChain } from './chain.ts';
import { type HouseEvent, headOf, NOTHING_YET } from './event.ts';

const SEED = 20_261_130;

const chainOf = (length: number): readonly HouseEvent[] => {
  const events: HouseEvent[] = [];
  for (let seq = 1; seq <= length; seq += 1) {
    const previous = events.at(-1)?.hash ?? NOTHING_YET.hash;
    events.push(
      sealed({
        ...{
          seq,
          id: `e${seq}`,
          atMs: 1000 + seq,
          by: 'p1',
          device: 'd1',
          commandId: null,
          previous,
        },
        ...{
          kind: 'note written',
          target: 'set:11',
          payload: { text: `note ${seq}`, writtenMs: null },
        },
      }),
    );
  }
  return events;
};

const EVENTS = chainOf(12);

describe('a chain', () => {
  it('holds from nothing, and from any head in it', () => {
    expect(verifyChain(EVENTS)).toMatchObject({ ok: true, value: { seq: 12 } });
    for (const [at, event] of EVENTS.entries()) {
      expect(verifyChain(EVENTS.slice(at + 1), headOf(event)).ok).toBe(true);
    }
  });

  it('tells what is wrong, and at which event', () => {
    const changed = EVENTS.map((event) =>
      event.seq === 5 ? ({ ...event, by: 'p2' } as HouseEvent) : event,
    );
    expect(verifyChain(changed)).toEqual({ ok: false, error: { seq: 5, what: 'hash' } });
    const without = EVENTS.filter(({ seq }) => seq !== 5);
    expect(verifyChain(without)).toEqual({ ok: false, error: { seq: 6, what: 'number' } });
    const resealed = EVENTS.map((event) => {
      const { hash: _hash, ...rest } = event;
      return event.seq === 5 ? sealed({ ...rest, by: 'p2' }) : event;
    });
    expect(verifyChain(resealed)).toEqual({ ok: false, error: { seq: 6, what: 'previous' } });
  });

  it('tells of a time that goes back, even where the hashes are right', () => {
    const [first] = chainOf(1);
    if (first === undefined) throw new Error('a chain of one has one');
    const { hash: previous, ...rest } = first;
    const early = sealed({ ...rest, seq: 2, id: 'e2', atMs: 1000, previous });
    expect(verifyChain([first, early])).toEqual({
      ok: false,
      error: { seq: 2, what: 'time' },
    });
  });

  it(`finds any one thing changed in any one event (seed ${SEED})`, () => {
    const change = fc.record({
      seq: fc.integer({ min: 1, max: EVENTS.length }),
      field: fc.constantFrom('id', 'atMs', 'by', 'device', 'target', 'payload', 'kind', 'hash'),
      value: fc.jsonValue({ maxDepth: 1 }),
    });
    fc.assert(
      fc.property(change, ({ seq, field, value }) => {
        const events = EVENTS.map((event) =>
          event.seq === seq ? ({ ...event, [field]: value } as HouseEvent) : event,
        );
        expect(verifyChain(events).ok).toBe(false);
      }),
      { seed: SEED },
    );
  });

  it(`finds any stretch taken out or turned round (seed ${SEED})`, () => {
    const places = fc.tuple(fc.nat({ max: 10 }), fc.nat({ max: 10 })).filter(([a, b]) => a < b);
    fc.assert(
      fc.property(places, fc.boolean(), ([from, to], isTurned) => {
        const cut = isTurned ? EVENTS.slice(from, to + 1).reverse() : [];
        const events = [...EVENTS.slice(0, from), ...cut, ...EVENTS.slice(to + 1)];
        expect(verifyChain(events).ok).toBe(false);
      }),
      { seed: SEED },
    );
  });
});
