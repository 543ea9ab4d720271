import { describe, expect, it } from 'vitest';
import { readMoment, writeMoment } from './moment-choice.ts';

describe('the moment in the address', () => {
  it.each([
    'trim:playing',
    'trim:in: low',
    'cue:0',
    'cue:12',
    'order:11:load:bare:3',
    'order:A:1:strike:recorded:0',
  ])('comes back as it was: %s', (at) => {
    const choice = readMoment(at);
    expect(choice).not.toBeNull();
    expect(choice && writeMoment(choice)).toBe(at);
  });

  it('is the record where nothing is said', () => {
    expect(readMoment(null)).toEqual({ of: 'record' });
    expect(writeMoment({ of: 'record' })).toBeNull();
  });

  it.each([
    '',
    'trim:',
    'cue:-1',
    'cue:two',
    'order:11:load:bare',
    'order:11:juggle:bare:1',
    'now',
  ])('is not guessed at: %s', (at) => {
    expect(readMoment(at)).toBeNull();
  });
});
