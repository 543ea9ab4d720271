/** What pens, weights, dashes and hatches become on a screen and on paper. Values: look/tokens. */
import type { Dash, Hatch, Lettering, LetterWidth, Pen, Weight } from './shape.ts';

export type Medium = 'screen' | 'paper';

export type Palette = Readonly<Record<Pen, string>>;

/** Black on white: a copier, red light and one hand lose every hue. */
export const PAPER_PALETTE: Palette = {
  ink: '#000',
  ink2: '#000',
  line: '#000',
  rule: '#777',
  solid: '#000',
  paper: '#fff',
  blue: '#000',
  red: '#000',
  ochre: '#000',
};

/** The tokens of the page, so that day, dim and its levels follow without a new drawing. */
export const SCREEN_PALETTE: Palette = {
  ink: 'var(--ink)',
  ink2: 'var(--ink-2)',
  line: 'var(--line)',
  rule: 'var(--rule)',
  solid: 'var(--solid)',
  paper: 'var(--paper)',
  blue: 'var(--blue)',
  red: 'var(--red)',
  ochre: 'var(--ochre)',
};

/** px on a screen. */
const WEIGHTS: Readonly<Record<Weight, number>> = {
  hair: 0.75,
  thin: 1,
  mid: 1.75,
  thick: 3,
  curve: 3.5,
  pencil: 2.5,
};

/** A pixel of the look is a quarter of a millimetre on paper; a unit of paper is a point. */
const POINTS_A_PIXEL = 72 / 25.4 / 4;

/** Width of a line in units of the drawing. */
export const lineWidth = (weight: Weight | number | undefined, medium: Medium): number => {
  if (typeof weight === 'number') return weight;
  const width = WEIGHTS[weight ?? 'hair'];
  return medium === 'screen' ? width : Number((width * POINTS_A_PIXEL).toFixed(2));
};

export const DASHES: Readonly<Record<Dash, string>> = {
  hidden: '5 3',
  other: '12 3 2 3 2 3',
  plan: '3 3',
  centre: '14 3 3 3',
};

/** One tile of a hatch; `angle` turns upright lines to the right, in degrees. */
export type HatchForm = {
  readonly tile: number;
  readonly angle: number;
  readonly pen: Pen;
  readonly lineWidth: number;
  /** Dots instead of lines. */
  readonly dots: boolean;
};

export const HATCHES: Readonly<Record<Hatch, HatchForm>> = {
  lock: { tile: 6, angle: 45, pen: 'line', lineWidth: 0.6, dots: false },
  cut: { tile: 5, angle: 45, pen: 'ink', lineWidth: 0.9, dots: false },
  notHeld: { tile: 7, angle: -45, pen: 'red', lineWidth: 1, dots: false },
  planned: { tile: 6, angle: -45, pen: 'line', lineWidth: 0.6, dots: false },
  closed: { tile: 8, angle: -45, pen: 'line', lineWidth: 1.4, dots: false },
  hands: { tile: 9, angle: 0, pen: 'line', lineWidth: 1.8, dots: true },
};

/** Per cent of the face's own width, for a face with a width axis. */
export const LETTER_STRETCH: Readonly<Record<LetterWidth, number>> = {
  head: 100,
  text: 92,
  narrow: 80,
};

export const LETTER_WEIGHT: Readonly<Record<Lettering['weight'], number>> = {
  plain: 400,
  strong: 650,
};
