import { describe, expect, it } from 'vitest';
import { writeDocument } from './write-document.ts';

describe('a written document', () => {
  it('has short lists and objects on one line, long ones on many', () => {
    const long = Array.from({ length: 30 }, (_, index) => `set ${index}`);
    expect(writeDocument({ a: { value: '35 lb', basis: 'weighed' }, b: ['x', 'y'] })).toBe(
      '{ "a": { "value": "35 lb", "basis": "weighed" }, "b": ["x", "y"] }\n',
    );
    expect(writeDocument({ long }).split('\n')).toHaveLength(35);
  });

  it('keeps to a hundred columns where a value does', () => {
    const fits = { key: 'x'.repeat(85) };
    const passes = { key: 'x'.repeat(90) };
    expect(writeDocument(fits).split('\n')).toHaveLength(2);
    expect(writeDocument(passes).split('\n')).toHaveLength(4);
  });

  it('keeps the order of keys', () => {
    expect(writeDocument({ z: 1, a: 2 })).toBe('{ "z": 1, "a": 2 }\n');
  });

  it('opens what is nested three deep, so that a change is a line', () => {
    expect(writeDocument({ a: { b: { c: { d: 1 } } } })).toContain('\n');
  });

  it('writes empty lists and objects short', () => {
    expect(writeDocument({ a: [], b: {} })).toBe('{ "a": [], "b": {} }\n');
  });
});
