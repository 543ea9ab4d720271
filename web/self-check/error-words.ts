/** An error and what it is counted in, in the language that is read. */
import type { Measure } from '#selfcheck';
import { sayError } from '#sheets';
import { message, phrase, type Voice } from '#texts';

/** What the cases count in that has words; a unit without them reads the same everywhere. */
const WORDED: ReadonlySet<string> = new Set([
  message('relative'),
  message('relative, to the other side'),
  message('last digits printed'),
  message('of the last digit printed'),
  message('of the factor'),
  message('of the load'),
  message('of the load, the load by 1 m'),
  message('of the load, the load by 1 m, 10 mm'),
  message('of the mass of the loom'),
  message('of weight over travel'),
  message('of w·L, w·L²'),
  message('of w·L, P'),
  message('of w·L, lines miscounted'),
  message('of P, P·L'),
  message('of 10 mm, w·L⁴/EI'),
  message('of 600 lbf, 600 lbf by 10 ft'),
  message('of 2400 N, 10 mm'),
  message('of 100 kip, 280 kN'),
  message('per cent of the strength'),
  message('kgf left out'),
  message('kg outside'),
  message('faults'),
  message('windows'),
  message('answers unlike'),
  message('texts unlike'),
  message('states unlike'),
  message('stacks unlike'),
  message('stacks miscounted'),
  message('plates miscounted'),
  message('sets miscounted'),
  message('shares unlike the table'),
  message('shares unlike the figure, or not told'),
  message('offsets misjudged'),
]);

export const figureWords = (error: number, { tongue }: Voice): string =>
  sayError(error).replace('.', tongue?.decimalMark ?? '.');

export const errorWords = ({ error, unit }: Measure, voice: Voice): string =>
  `${figureWords(error, voice)} ${WORDED.has(unit) ? phrase(voice, unit) : unit}`;
