import { tradeWord } from '#drawings';
import type { House } from '#house';
import { lengthUnit, massUnit } from '../frame/unit-words.ts';

export const HEAD_COLUMNS = 16;

type Head = { readonly words: string; readonly unit?: string; readonly className?: string };

const headsOf = (house: House): readonly Head[] => {
  const trim = tradeWord(house, 'trim');
  const batten = tradeWord(house, 'batten');
  const small = house.units === 'customary' ? 'in' : 'm';
  return [
    { words: 'set', className: 'set-number' },
    { words: 'position', unit: lengthUnit(house), className: 'number' },
    { words: 'item', className: 'name' },
    { words: 'items' },
    { words: 'kind' },
    { words: `in ${trim}`, unit: batten, className: 'number' },
    { words: `out ${trim}`, unit: batten, className: 'number' },
    { words: 'depth', unit: `± ${small}`, className: 'number' },
    { words: 'hung', unit: massUnit(house), className: 'number' },
    { words: tradeWord(house, 'bricks'), unit: 'show', className: 'number' },
    { words: 'stack', unit: small, className: 'number' },
    { words: 'balance', className: 'slice' },
    { words: 'at in', unit: massUnit(house), className: 'number' },
    { words: 'at out', unit: massUnit(house), className: 'number' },
    { words: 'findings', className: 'findings' },
    { words: 'known by', className: 'known-by' },
  ];
};

/** The ends of the slices: the arbor is heavy on the side where it hangs. */
const SliceEnds = ({ house }: { readonly house: House }) => {
  const ends = [tradeWord(house, 'arborHeavy'), tradeWord(house, 'battenHeavy')];
  const [left, right] = house.stage.operatingSide === 'stageRight' ? ends : ends.toReversed();
  return (
    <small className="slice-ends">
      <span>{left}</span>
      <span>{right}</span>
    </small>
  );
};

export const HangListHead = ({ house }: { readonly house: House }) => (
  <thead>
    <tr>
      {headsOf(house).map(({ words, unit, className }) => (
        <th key={words} scope="col" className={className}>
          {words}
          {unit === undefined ? null : <small>{unit}</small>}
          {className === 'slice' ? <SliceEnds house={house} /> : null}
        </th>
      ))}
    </tr>
  </thead>
);
