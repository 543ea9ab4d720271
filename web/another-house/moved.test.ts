import { expect, it } from 'vitest';
import { moved, readMoves, withMove, writeMoves } from './moved.ts';

it('comes back from its text, and nowhere is nothing behind the sign', () => {
  const moves = [
    { from: '9', to: '12' },
    { from: '11', to: null },
  ];
  expect(writeMoves(moves)).toBe('9>12,11>');
  expect(readMoves('9>12,11>')).toEqual(moves);
  expect(writeMoves([])).toBeNull();
  expect(readMoves(null)).toEqual([]);
});

it('leaves out what is no move', () => {
  expect(readMoves('9,>4,9>a b,9>1>2,__proto__>1')).toEqual([]);
});

it('counts the last move of a piece, and what stood there hangs nowhere', () => {
  const moves = withMove(withMove([], { from: '1', to: '5' }), { from: '1', to: '2' });
  expect(moves).toEqual([{ from: '1', to: '2' }]);
  expect(moved({ 1: '1', 2: '2' }, moves)).toEqual({ 1: '2', 2: null });
  expect(moved({ 1: '1' }, [{ from: '77', to: '1' }])).toEqual({ 1: '1' });
});
