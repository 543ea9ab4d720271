import { describe, expect, it } from 'vitest';
import { FOOT, INCH, POUND } from '#quantities';
import showRaw from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import houseRaw from '../../examples/kestlemere/house.json' with { type: 'json' };
import stateRaw from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf } from '../order/example-work.ts';
import { firstTyped, readTyped, type Typed } from './typed-piece.ts';

const work = documentsOf({ house: houseRaw, show: showRaw, state: stateRaw });
const { show } = work;
const blank: Typed = firstTyped(work, '');

const read = (typed: Partial<Typed>) => readTyped({ ...blank, ...typed }, show);

describe('a piece typed into the form', () => {
  it('reads measures in any unit and places the width about the centre', () => {
    const answer = read({ name: ' Kite ', mass: '90 lb', halfDepth: '4 in', width: '20 ft' });
    if (answer.is === 'refused') throw new Error('refused');
    const { piece, wanted } = answer.question;
    expect(wanted).toBeNull();
    expect(piece.hang).toMatchObject({ name: 'Kite', halfDepth: { value: 4 * INCH } });
    expect(piece.hang.items).toMatchObject([
      { takeoff: { mass: { value: 90 * POUND } }, placement: { from: -10 * FOOT, to: 10 * FOOT } },
    ]);
  });

  it('keeps what was not typed unknown, and takes it for no zero', () => {
    const answer = read({ name: 'Kite' });
    if (answer.is === 'refused') throw new Error('refused');
    const { hang } = answer.question.piece;
    expect(hang.halfDepth.known).toBe(false);
    expect(hang.trims).toEqual([]);
    expect(hang.items).toMatchObject([{ takeoff: { mass: { known: false } }, placement: null }]);
  });

  it('refuses a number without its unit, in its field', () => {
    expect(read({ mass: '90', place: '10 kg' })).toMatchObject({
      is: 'refused',
      faults: { mass: { found: '90' }, place: {} },
    });
  });

  it('takes a piece of the show as the show has it, whatever else stands in the form', () => {
    const answer = read({ from: '17', mass: 'a lot', within: '3 ft', place: '14 ft' });
    if (answer.is === 'refused') throw new Error('refused');
    expect(answer.question.piece.from).toBe('17');
    expect(answer.question.wanted).toEqual({ y: 14 * FOOT, within: 3 * FOOT });
  });

  it('reads a decimal comma in such a language, and hands on what documents write', () => {
    const tongue = { language: 'de', decimalMark: ',', months: [], date: '', texts: {} } as const;
    const typed = { ...blank, mass: '12,5 kg', low: '1,5 m', name: ' ' };
    const answer = readTyped(typed, show, { words: 'US', tongue });
    if (answer.is === 'refused') throw new Error('refused');
    expect(answer.question.piece.hang.items).toMatchObject([
      { takeoff: { mass: { value: 12.5 } } },
    ]);
    expect(answer.written).toMatchObject({ mass: '12.5 kg', low: '1.5 m', name: 'New piece' });
    expect(readTyped({ ...blank, mass: '1.250 kg' }, show, { words: 'US', tongue }).is).toBe(
      'refused',
    );
  });

  it('opens near where the piece hangs, and blank for a set that hangs nothing', () => {
    const { from, place } = firstTyped(work, '17');
    const answer = read({ from, place });
    // Set 17 stands at 171 in.
    expect(answer).toMatchObject({ question: { wanted: { y: expect.closeTo(171 * INCH) } } });
    expect(firstTyped(work, '18')).toEqual(blank);
  });
});
