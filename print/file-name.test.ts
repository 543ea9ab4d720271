import { describe, expect, it } from 'vitest';
import { fileNameOf } from './file-name.ts';

const nameOf = (id: string, frame: string | null = null): string =>
  fileNameOf({ id, frame }, 'pdf');

describe('the name of a file', () => {
  it('is the kind of the sheet and the set', () => {
    expect(nameOf('schedule')).toBe('schedule.pdf');
    expect(nameOf('balance-card/11')).toBe('balance-card-11.pdf');
    expect(fileNameOf({ id: 'balance-card/D2', frame: null }, 'csv')).toBe('balance-card-D2.csv');
  });

  it('begins with the word of the frame on what is not real', () => {
    expect(nameOf('take-off', 'DEMO: an invented house and show')).toBe('demo-take-off.pdf');
    expect(nameOf('take-off', 'WHAT IF')).toBe('what-if-take-off.pdf');
  });

  it('leads into no other folder, whatever a set is called', () => {
    for (const set of ['../../etc/passwd', '..\\x', 'C:', 'a\0b', 'ř', '"', '.', '']) {
      expect(nameOf(`balance-card/${set}`)).toMatch(/^[A-Za-z0-9_-]+\.pdf$/);
    }
  });

  it('differs where the sets differ', () => {
    const sets = ['1', '1.5', '1_5', '1/5', '1-5', '1 5', '15', '1_2e_5'];
    expect(new Set(sets.map((set) => nameOf(`balance-card/${set}`))).size).toBe(sets.length);
  });
});
