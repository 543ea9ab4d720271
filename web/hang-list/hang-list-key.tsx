/** What the signs of the slices mean, and which kind of brick goes by which letter. */

import { memo } from 'react';
import { type Drawing, line, path, polyline } from '#drawings';
import type { House } from '#house';
import { sayMeasure } from '#sheets';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useTell } from '../language/use-tell.ts';

const sample = (width: number, shapes: Drawing['shapes']): Drawing => ({
  width,
  height: 18,
  title: '',
  shapes,
});

const BRACKETS = sample(40, [
  polyline(
    [
      { x: 6, y: 2 },
      { x: 2, y: 2 },
      { x: 2, y: 16 },
      { x: 6, y: 16 },
    ],
    { stroke: 'ink', weight: 'thin' },
  ),
  polyline(
    [
      { x: 34, y: 2 },
      { x: 38, y: 2 },
      { x: 38, y: 16 },
      { x: 34, y: 16 },
    ],
    { stroke: 'ink', weight: 'thin' },
  ),
]);
const FREE = sample(36, [line(0, 9, 36, 9, { stroke: 'ink', weight: 'thick' })]);
const BARE = sample(36, [line(0, 9, 36, 9, { stroke: 'ink', weight: 'thin' })]);
const LANDED = sample(44, [
  line(8, 9, 44, 9, { stroke: 'red', weight: 'mid', dash: 'plan' }),
  path('M0 9L8 5V13Z', { fill: 'red' }),
]);
const NOW = sample(14, [path('M1 4H13L7 15Z', { fill: 'blue' })]);

const KeyLine = ({ drawing, words }: { readonly drawing: Drawing; readonly words: string }) => (
  <li>
    <DrawingView drawing={drawing} silent />
    {words}
  </li>
);

export const HangListKey = memo(({ house }: { readonly house: House }) => {
  const tell = useTell();
  const { lockLimit } = house.rules;
  const lock = lockLimit.known
    ? tell('{measure} each way', {
        measure: sayMeasure({ value: lockLimit.value, kind: 'force' }, house, { round: 'down' }),
      })
    : tell('not known in this house, so not drawn');
  const kinds = house.brickKinds
    .map(({ id, name, mass }) => {
      const each = mass.known
        ? sayMeasure({ value: mass.value, kind: 'mass' }, house, { style: 'fine' })
        : tell('mass unknown');
      return `${id}: ${name}, ${each}`;
    })
    .join('; ');
  return (
    <div className="keys">
      <ul className="key-lines" aria-label={tell('Key to the balance column')}>
        <KeyLine
          drawing={BRACKETS}
          words={tell('the lock, {lock}; less where its own test says so', { lock })}
        />
        <KeyLine drawing={FREE} words={tell('free of the deck, over the travel')} />
        <KeyLine drawing={BARE} words={tell('empty, bare batten')} />
        <KeyLine
          drawing={LANDED}
          words={tell('brought in to the deck with all its bricks: past the lock')}
        />
        <KeyLine drawing={NOW} words={tell('as recorded')} />
      </ul>
      <p className="quiet">
        {kinds === '' ? '' : `${kinds}. `}
        {tell(
          'To type: select a cell and begin. Enter and Tab take it, Escape leaves it; arrows ' +
            'move. A measure needs its unit.',
        )}
      </p>
    </div>
  );
});
HangListKey.displayName = 'HangListKey';
