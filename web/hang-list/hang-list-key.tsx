/** What the signs of the slices mean, and which kind of brick goes by which letter. */
import { type Drawing, line, path, polyline, tradeWord } from '#drawings';
import type { House } from '#house';
import { sayMeasure } from '#sheets';
import { DrawingView } from '../drawing/drawing-view.tsx';

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

export const HangListKey = ({ house }: { readonly house: House }) => {
  const { lockLimit } = house.rules;
  const lock = lockLimit.known
    ? `${sayMeasure({ value: lockLimit.value, kind: 'force' }, house, { round: 'down' })} each way`
    : 'not known in this house, so not drawn';
  const [bricks, deck] = [tradeWord(house, 'bricks'), tradeWord(house, 'deck')];
  return (
    <div className="keys">
      <ul className="key-lines" aria-label="Key to the balance column">
        <KeyLine drawing={BRACKETS} words={`the lock, ${lock}; less where its own test says so`} />
        <KeyLine drawing={FREE} words={`free of the ${deck}, over the travel`} />
        <KeyLine drawing={BARE} words={`empty, bare ${tradeWord(house, 'batten')}`} />
        <KeyLine
          drawing={LANDED}
          words={`brought in to the ${deck} with all its ${bricks}: past the lock`}
        />
        <KeyLine drawing={NOW} words="as recorded" />
      </ul>
      <p className="quiet">
        {house.brickKinds
          .map(({ id, name, mass }) => {
            const each = mass.known
              ? sayMeasure({ value: mass.value, kind: 'mass' }, house, { style: 'fine' })
              : 'mass unknown';
            return `${id}: ${name}, ${each}`;
          })
          .join('; ')}
        {house.brickKinds.length === 0 ? '' : '. '}
        To type: select a cell and begin. Enter and Tab take it, Escape leaves it; arrows move. A
        measure needs its unit.
      </p>
    </div>
  );
};
