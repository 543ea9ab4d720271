/**
 * The Clockmaker of Vell put on the sets of the second demo house. Distances, loads and stops are
 * those of the tables of both houses, subtracted by hand beside each check.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readShow, readShowValue } from '#documents';
import {
  type FitAsked,
  fitShow,
  groupedQuestions,
  propose,
  questionLetter,
  remapped,
  sayBar,
  sayChange,
  sayDiffers,
} from '#fitting';
import { FOOT, INCH, POUND } from '#quantities';
import { openExample } from '../open-example.ts';

const here = openExample('kestlemere');
const there = openExample('skelderwick');
const text = readFileSync(new URL('./clockmaker.show.json', import.meta.url), 'utf8');
const read = readShow(text, here.house);
if (!read.ok) throw new Error(JSON.stringify(read.error));
const document = read.value.raw;

const asked: FitAsked = {
  from: { house: here.house, show: here.show, document },
  to: { house: there.house, state: there.state },
};
const named = { id: 'fitted', name: 'Fitted' };
const heard: number[] = [];
const proposal = propose(asked, (done) => heard.push(done));
const fit = fitShow(asked, proposal, named);

const piece = (set: string) => {
  const found = fit.pieces.find(({ from }) => from === set);
  if (found === undefined) throw new Error(`no piece from set ${set}`);
  return found;
};

const plain = (words: string): string => words.replaceAll('\u00a0', ' ');

describe('the show in the other house', () => {
  it('hears of every piece once, and answers for every piece', () => {
    expect(heard).toEqual(Array.from({ length: 28 }, (_, index) => index + 1));
    expect(fit.pieces.map(({ from }) => from)).toEqual(here.show.hangs.map(({ set }) => set));
  });

  it('keeps the order in depth and leaves no two neighbours overlapping', () => {
    const order = there.house.lineSets.map(({ id }) => id);
    const hung = fit.pieces.flatMap(({ from, to }) => (to === null ? [] : [{ from, to }]));
    const places = hung.map(({ to }) => order.indexOf(to));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    const y = (set: string): number => {
      const place = there.house.lineSets.find(({ id }) => id === set)?.y;
      return place?.known ? place.value : Number.NaN;
    };
    const depth = (set: string): number => {
      const half = here.show.hangs.find((hang) => hang.set === set)?.halfDepth;
      return half?.known ? half.value : 0;
    };
    for (const [index, { from, to }] of hung.entries()) {
      const next = hung[index + 1];
      if (next === undefined) continue;
      // Two that touch differ in the last binary place.
      expect(y(next.to) - y(to)).toBeGreaterThanOrEqual(depth(from) + depth(next.from) - 1e-9);
    }
  });

  it('puts the house curtain on the set nearest to where it hangs', () => {
    // 18 in is 0.4572 m; set 1 is at 0.55 m.
    expect(piece('1').to).toBe('1');
    expect(piece('1').shiftM).toBeCloseTo(0.55 - 18 * INCH, 9);
  });

  it('writes a trim that is out of reach at the stop, and says so', () => {
    const trim = piece('1').changes.find(({ is }) => is === 'trim');
    expect(trim).toEqual({ is: 'trim', name: 'out', wasM: 60.5 * FOOT, nowM: 15.4 });
    expect(plain(sayChange({ is: 'trim', name: 'out', wasM: 18, nowM: 15 }, there.house))).toBe(
      'Dead out, 18.000 m, is out of reach; written as 15.000 m, the stop.',
    );
  });

  it('leaves a place open that the shorter batten does not reach', () => {
    // The cloth spreads to 24 ft, 7.3152 m; the batten ends at 6.5 m.
    const place = piece('1').changes.find(({ is }) => is === 'place');
    expect(place?.is === 'place' ? place.byM : 0).toBeCloseTo(24 * FOOT - 6.5, 9);
  });

  it('lets no set carry more than it may', () => {
    // 756 lb are 342.9 kg: past the 320 kg of double purchase, and no other set is near enough.
    const bars = piece('5').bars.map(({ bar }) => bar);
    expect(piece('5').to).toBeNull();
    const heavy = bars.find((bar) => bar.is === 'tooHeavy' && bar.limitKg === 320);
    expect(heavy?.is === 'tooHeavy' ? heavy.massKg : 0).toBeCloseTo(756 * POUND, 0);
    expect(heavy && plain(sayBar(heavy, there.house))).toContain('320.0 kg may');
  });

  it('finds what the rules say there and did not say here', () => {
    // Half of the flat hangs at each of two points: 320 lb and its tolerance, past 120 kg.
    expect(piece('11').fails.map(({ code }) => code)).toContain('LOD-005');
    expect(fit.fails.map(({ code }) => code)).toContain('STL-001');
    expect(fit.pieces.flatMap(({ fails }) => fails).map(({ code }) => code)).not.toContain(
      'UNK-001',
    );
  });

  it('says what differs in the house and of two sets', () => {
    const said = fit.differs.map((each) => plain(sayDiffers(each, there.house)));
    expect(said).toContain('operating side: stage right, there stage left');
    const own = piece('1').differs.map((each) => plain(sayDiffers(each, there.house)));
    expect(own).toContain('how it is carried: single purchase, there double purchase');
    // 61 ft are 18.593 m.
    expect(own).toContain('high stop: 18.593 m, there 15.400 m');
  });

  it('asks only of what the show takes there, in a letter that can be sent', () => {
    const groups = groupedQuestions(fit.questions, there.house);
    expect(groups.map(({ of }) => of)).toContain('Head-block bay South');
    expect(fit.questions.filter(({ of }) => of.includes('F1'))).toEqual([]);
    const reader = there.house;
    const letter = questionLetter(fit.questions, { show: 'A', house: 'B', reader });
    expect(letter.split('\n')[0]).toBe('A at B: please tell us what you know of the following.');
    expect(letter).toContain('horizontal limit, said here: not surveyed');
  });

  it('never takes a set that is not free there', () => {
    expect(fit.withheld.map(({ set }) => set)).toEqual(['F1']);
    expect(Object.values(fit.mapping)).not.toContain('F1');
  });
});

describe('the document for the other house', () => {
  it('is read there without a refusal, with its cues and without bricks of another arbor', () => {
    expect(fit.refusals).toEqual([]);
    const again = readShowValue(fit.document, there.house);
    expect(again.ok).toBe(true);
    if (!again.ok) return;
    const { show } = again.value;
    expect(show.hangs).toHaveLength(fit.pieces.filter(({ to }) => to !== null).length);
    expect(show.hangs.every(({ bricks }) => bricks === null)).toBe(true);
    expect(show.keptEmpty).toEqual({});
    expect(show.cues.length).toBeGreaterThan(20);
    expect(show.cues.every(({ to }) => to <= 15.4 + 1e-9)).toBe(true);
    expect(show.remarks[0]).toBe('Fitted from The Clockmaker of Vell at Kestlemere Playhouse.');
    expect(show.remarks[1]).toContain('Hangs nowhere here: Electric 1 (set 5)');
  });

  it('follows a piece that is moved by hand, and what stood there hangs nowhere', () => {
    const mapping = remapped(fit.mapping, '11', '7');
    expect(mapping['11']).toBe('7');
    const crowded = remapped(mapping, '3', '7');
    expect([crowded['3'], crowded['11']]).toEqual(['7', null]);
    const other = fitShow(asked, { ...proposal, mapping: crowded }, named);
    expect(other.refusals).toEqual([]);
    expect(other.pieces.find(({ from }) => from === '11')?.to).toBeNull();
  });

  it('loosens a pair of which one half hangs nowhere', () => {
    const mapping = { ...fit.mapping, 27: null };
    const other = fitShow(asked, { ...proposal, mapping }, named);
    expect(other.refusals).toEqual([]);
    const left = other.pieces.find(({ from }) => from === '23');
    expect(left?.changes).toContainEqual({ is: 'coupling', withSet: '27' });
  });

  it('fits every show of the demo to either house, and is always read', () => {
    const winter = readShow(
      readFileSync(new URL('./winterferry.show.json', import.meta.url), 'utf8'),
      here.house,
    );
    if (!winter.ok) throw new Error(JSON.stringify(winter.error));
    const regattaText = readFileSync(
      new URL('../skelderwick/regatta.show.json', import.meta.url),
      'utf8',
    );
    const regatta = readShow(regattaText, there.house);
    if (!regatta.ok) throw new Error(JSON.stringify(regatta.error));
    const asks: readonly FitAsked[] = [
      {
        from: { house: here.house, show: winter.value.show, document: winter.value.raw },
        to: { house: there.house, state: null },
      },
      {
        from: { house: there.house, show: regatta.value.show, document: regatta.value.raw },
        to: { house: here.house, state: here.state },
      },
    ];
    for (const each of asks) {
      const found = fitShow(each, propose(each), named);
      expect(found.refusals).toEqual([]);
      expect(found.pieces.filter(({ to }) => to !== null).length).toBeGreaterThan(5);
    }
  });
});
