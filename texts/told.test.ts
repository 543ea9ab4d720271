import { describe, expect, it } from 'vitest';
import { ENGLISH, inVoice, type Tongue, told, toldEach, toldRuns } from './index.ts';

const OF_ENGINE: Readonly<Record<string, string>> = {
  'height of the low stop': 'Höhe des unteren Anschlags',
  'mass of brick {id}': 'Masse von Gewicht {id}',
  'arbor of set {set}': 'Schlitten von Zug {set}',
  'the stack on the arbor, as counted': 'der Stapel auf dem Schlitten, wie gezählt',
  'set {setRuns}': 'Zug {setRuns}',
  'finished width': 'fertige Breite',
  'not given': 'nicht angegeben',
  '{omitsWords}; the limit is not known': '{omitsWords}; die Grenze ist nicht bekannt',
  'starts and stops': 'Anfahren und Halten',
  'past x = {atFigure} m': 'jenseits von x = {atFigure} m',
  'published: {source}': 'veröffentlicht: {source}',
};

const tongue: Tongue = {
  language: 'de',
  decimalMark: ',',
  months: [],
  date: '',
  texts: { ...OF_ENGINE, '{from} to {to}': '{from} bis {to}', batten: 'Laststange' },
  told: Object.keys(OF_ENGINE),
};
const GERMAN = { words: 'US', tongue } as const;

describe('a text of the engine', () => {
  it('stays what it is in English of either kind', () => {
    expect(told(ENGLISH, 'height of the batten')).toBe('height of the batten');
    expect(told({ words: 'UK' }, 'height of the batten')).toBe('height of the batten');
  });

  it.each([
    ['height of the low stop', 'Höhe des unteren Anschlags'],
    ['mass of brick F', 'Masse von Gewicht F'],
    ['height of the low stop (not surveyed)', 'Höhe des unteren Anschlags (not surveyed)'],
    ['mass of brick F (set 1 to 8, 10)', 'Masse von Gewicht F (Zug 1 bis 8, 10)'],
    ['mass of brick F; mass of brick H', 'Masse von Gewicht F; Masse von Gewicht H'],
    ['mass of brick F, mass of brick H', 'Masse von Gewicht F, Masse von Gewicht H'],
    ['Border 1: finished width', 'Border 1: fertige Breite'],
    [
      'arbor of set 16: the stack on the arbor, as counted',
      'Schlitten von Zug 16: der Stapel auf dem Schlitten, wie gezählt',
    ],
    [
      'finished width (takeoff.width): not given',
      'fertige Breite (takeoff.width): nicht angegeben',
    ],
    [
      'Flat: finished width (takeoff.width): ask Jo',
      'Flat: fertige Breite (takeoff.width): ask Jo',
    ],
    [
      'starts and stops; the limit is not known',
      'Anfahren und Halten; die Grenze ist nicht bekannt',
    ],
    ['past x = -1.25 m', 'jenseits von x = -1,25 m'],
    ['published: tube table, 48.3 mm; store', 'veröffentlicht: tube table, 48.3 mm; store'],
  ])('"%s" is "%s"', (text, words) => {
    expect(told(GERMAN, text)).toBe(words);
    expect(inVoice(GERMAN, text)).toBe(words);
  });

  it.each([
    ['that the tongue has not', 'height of the moon'],
    ['of which it has a part only', 'height of the moon; mass of brick F'],
    ['that people wrote, though a word of the trade', 'batten'],
    ['whose part to be said in turn it has not', 'moon and stars; the limit is not known'],
    ['where a name would swallow what follows', 'mass of brick F; tide'],
    ['in a tongue without texts of the engine', 'tide'],
  ])('%s stays English whole', (_, text) => {
    expect(told(GERMAN, text)).toBe(text);
  });

  it('lists sets in rows', () => {
    expect(toldRuns(GERMAN, '1 to 13, 15')).toBe('1 bis 13, 15');
    expect(toldRuns(ENGLISH, '1 to 13, 15')).toBe('1 to 13, 15');
  });

  it('stands beside names in a list', () => {
    expect(toldEach(GERMAN, 'playing, starts and stops')).toBe('playing, Anfahren und Halten');
    expect(toldEach(ENGLISH, 'playing, starts and stops')).toBe('playing, starts and stops');
  });
});
