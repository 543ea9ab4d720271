import { describe, expect, it } from 'vitest';
import { FAULTS_TOLD, newFaults } from './faults.ts';

const words = { found: 'x', accepted: 'y' };

describe('what is sound', () => {
  const faults = newFaults();
  faults.refuse('wrongType', 'a[3].b', words);

  it.each(['', 'a', 'a[3]', 'a[3].b', 'a[3].b.c', 'a[3].b[0]'])('is not %s', (path) => {
    expect(faults.sound(path)).toBe(false);
  });

  it.each(['b', 'a[4]', 'a[3].c', 'a[3].bc', 'a[33].b'])('is %s', (path) => {
    expect(faults.sound(path)).toBe(true);
  });

  it('is several paths where each is', () => {
    expect(faults.sound('b', 'a[4]')).toBe(true);
    expect(faults.sound('b', 'a')).toBe(false);
  });

  it('is nothing once the whole was refused', () => {
    const whole = newFaults();
    whole.refuse('wrongType', '', words);
    expect(whole.sound('a')).toBe(false);
  });
});

describe('the list of faults', () => {
  it('has one fault once', () => {
    const faults = newFaults();
    faults.refuse('wrongType', 'a', words);
    faults.refuse('wrongType', 'a', words);
    faults.refuse('negative', 'a', words);
    expect(faults.list().map(({ code }) => code)).toEqual(['DOC-032', 'DOC-051']);
  });

  it('ends with how many more there are', () => {
    const faults = newFaults();
    for (let at = 0; at < FAULTS_TOLD + 5; at += 1) faults.refuse('wrongType', `a[${at}]`, words);
    expect(faults.list()).toHaveLength(FAULTS_TOLD + 1);
    expect(faults.list().at(-1)?.found).toBe('5 more faults than are told here');
    expect(faults.count()).toBe(FAULTS_TOLD + 5);
    expect(faults.sound(`a[${FAULTS_TOLD + 4}]`)).toBe(false);
  });
});
