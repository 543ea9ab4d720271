import { describe, expect, it } from 'vitest';
import { assert, unreachable } from './defect.ts';
import { refusal } from './refusal.ts';
import { fail, ok } from './result.ts';

describe('a result', () => {
  it('is a value or an error, and says which', () => {
    expect(ok(7)).toEqual({ ok: true, value: 7 });
    expect(fail('no lift lines')).toEqual({ ok: false, error: 'no lift lines' });
  });
});

describe('a refusal', () => {
  it('says where, what was found and what is accepted', () => {
    const found = refusal('DOC-104', 'lineSets[3].lowStop', {
      found: '"3 lb"',
      accepted: 'a length',
    });
    expect(found).toEqual({
      code: 'DOC-104',
      path: 'lineSets[3].lowStop',
      found: '"3 lb"',
      accepted: 'a length',
    });
  });
});

describe('a defect', () => {
  it('throws with its claim, and stays quiet where the claim holds', () => {
    expect(() => assert(false, 'reactions sum to the load')).toThrow(
      'defect: reactions sum to the load',
    );
    expect(() => assert(true, 'reactions sum to the load')).not.toThrow();
  });

  it('throws at a kind that nobody has a case for', () => {
    expect(() => unreachable({ kind: 'balloon' } as never)).toThrow(
      'defect: no case for {"kind":"balloon"}',
    );
  });
});
