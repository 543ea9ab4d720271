/** The measure along the foot of a drawing of the house, with a bar of true length. */

import type { House } from '#house';
import { FOOT, formatLength, metres } from '#quantities';
import { phrase } from '#texts';
import type { FieldScale, FieldView } from './field-view.ts';
import { textWidth } from './lettering.ts';
import { scaleBar } from './scale-bar.ts';
import { type Drawing, lettering, line, type Shape } from './shape.ts';

type StripOptions = {
  readonly letter: number;
  readonly view: FieldView;
  readonly height: number;
  /** What is measured: `upstage of the plaster line`. */
  readonly words: string;
};

/** Round lengths, feet or metres, of which one is far enough from the next to be lettered. */
const TICKS = [1, 2, 5, 10, 20, 50] as const;

/** Letters that the longest figure takes, with room beside it. */
const APART = 3.2;

/** As wide as the field that the scale is of. To both sides of its zero it counts upwards. */
export const measureStrip = (
  house: House,
  scale: FieldScale,
  { letter, view, height, words }: StripOptions,
): Drawing => {
  const { width, perMetre } = scale;
  const unitM = house.units === 'customary' ? FOOT : 1;
  const step = TICKS.find((each) => each * unitM * perMetre > letter * APART) ?? 50;
  const first = Math.ceil(view.left / unitM / step) * step;
  const count = Math.max(0, Math.floor((view.right / unitM - first) / step) + 1);
  const ticks = Array.from({ length: count }, (_, index) => first + index * step);
  const shapes = ticks.flatMap((tick): readonly Shape[] => {
    const x = scale.xOf(tick * unitM);
    if (x < letter || x > width - letter) return [];
    const figure = formatLength(metres(Math.abs(tick) * unitM), house);
    return [
      line(x, 0, x, 5, { stroke: 'line', weight: 'thin' }),
      lettering(x, 5 + letter, figure, letter, { anchor: 'middle', pen: 'ink2' }),
    ];
  });
  const wordsWidth = textWidth(words, letter);
  const room = width - wordsWidth - letter * 6;
  return {
    width,
    height,
    title: phrase(house, 'Measure {words}', { words }),
    shapes: [
      ...shapes,
      lettering(0, letter * 3.2, words, letter, { pen: 'ink2' }),
      ...(room < width * 0.3
        ? []
        : [
            scaleBar({
              x: wordsWidth + letter * 2,
              y: letter * 2.6,
              room: Math.min(room, width / 3),
              perMetre,
              units: house.units,
              letter,
            }),
          ]),
    ],
  };
};
