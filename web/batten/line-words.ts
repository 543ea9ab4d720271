/** What a line does, in few words: for labels, for a value that is spoken, and for the table. */
import type { LineState, StructureState } from '#assessment';
import { smallLengthWords, tensionWords } from '#drawings';
import type { House } from '#house';
import { phrase } from '#texts';

/** `1/8 in`, `1 mm`: one press at a turnbuckle. */
export const stepWords = (house: House, stepM: number): string => smallLengthWords(house, stepM);

const NO_TURN_M = 1e-9;

export const turnWords = (house: House, turnM: number): string => {
  if (Math.abs(turnM) < NO_TURN_M) return phrase(house, 'not turned');
  const length = smallLengthWords(house, turnM);
  return turnM > 0
    ? phrase(house, '{length} shorter', { length })
    : phrase(house, '{length} longer', { length });
};

export const pullWords = (house: House, { tension, slack }: LineState): string =>
  slack ? phrase(house, 'slack') : tensionWords(house, tension);

/** The line that pulls most, and every line that hangs loose. */
export const worstWords = ({ beam, lines }: StructureState, house: House): string => {
  if ('unstable' in beam) return phrase(house, 'nothing holds it level: no figures');
  const most = lines.reduce(
    (best, each, index) => (each.tension > (lines[best]?.tension ?? 0) ? index : best),
    0,
  );
  const worst = lines[most];
  const loose = lines.flatMap(({ slack }, index) =>
    slack ? [phrase(house, 'line {index} slack', { index: index + 1 })] : [],
  );
  const pull = worst === undefined ? '' : tensionWords(house, worst.tension);
  return [phrase(house, 'most on line {line}, {pull}', { line: most + 1, pull }), ...loose].join(
    '; ',
  );
};
