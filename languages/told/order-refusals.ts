/** Why a step or an order of work is not taken. */
import { message } from '#texts';

export const ORDER_REFUSALS: readonly string[] = [
  message('unknown'),
  message('none'),
  message('a force of zero or more'),
  message('{heightFigure} m'),
  message('{kind}, plate {plate} of {count}'),
  message('after {how}'),
  message('plastic moment over {factorFigure}, {wallWords}'),
  message('moment at first yield over {factorFigure}, {wallWords}'),
  message('plastic moment over {factorFigure}, {wallWords}; {source}'),
  message('moment at first yield over {factorFigure}, {wallWords}; {source}'),
];
