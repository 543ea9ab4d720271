import { describe, expect, it } from 'vitest';
import { farther, nearer, viewByKey } from './use-field-view.ts';

const VIEW = { left: 0, right: 10, bottom: 0, top: 20 };

describe('keys over the drawing', () => {
  it('move by a quarter of what is shown', () => {
    expect(viewByKey(VIEW, 'ArrowRight')).toEqual({ left: 2.5, right: 12.5, bottom: 0, top: 20 });
    expect(viewByKey(VIEW, 'ArrowLeft')).toEqual({ left: -2.5, right: 7.5, bottom: 0, top: 20 });
    expect(viewByKey(VIEW, 'ArrowUp')).toEqual({ left: 0, right: 10, bottom: 5, top: 25 });
    expect(viewByKey(VIEW, 'ArrowDown')).toEqual({ left: 0, right: 10, bottom: -5, top: 15 });
  });

  it('come nearer and go farther about the middle: ten metres by 1.25 are eight', () => {
    expect(viewByKey(VIEW, '+')).toEqual({ left: 1, right: 9, bottom: 2, top: 18 });
    expect(farther(nearer(VIEW))).toEqual(VIEW);
  });

  it('show the whole, and leave every other key to the page', () => {
    expect(viewByKey(VIEW, '0')).toBeNull();
    expect(viewByKey(VIEW, 'Tab')).toBeUndefined();
    expect(viewByKey(VIEW, 'a')).toBeUndefined();
  });
});
