/** A fit in words: piece by piece, then the house, then the questions for it. */
import type { Finding } from '#findings';
import {
  type Fit,
  type FitAsked,
  type PieceFit,
  questionLetter,
  sayBar,
  sayChange,
  sayDiffers,
} from '#fitting';
import type { House } from '#house';
import { sayFinding, sayMeasure } from '#sheets';

const findingLine = (finding: Finding, reader: House): string => {
  const { word, sentence } = sayFinding(finding, reader);
  return `${word}: ${sentence} [${finding.code}]`;
};

const shiftWords = ({ shiftM }: PieceFit, reader: House): string => {
  if (shiftM === null) return 'place not known';
  const length = sayMeasure({ value: Math.abs(shiftM), kind: 'length' }, reader);
  return `${length} ${shiftM < 0 ? 'downstage' : 'upstage'}`;
};

const pieceLines = (piece: PieceFit, reader: House): readonly string[] => {
  const { from, name, to, changes, differs, fails, bars } = piece;
  const head = `${from.padStart(4)} to ${(to ?? 'none').padEnd(5)} ${name.padEnd(30)}`;
  if (to === null) {
    return [
      `${head} HANGS NOWHERE`,
      ...bars.map(({ bar, sets }) => `       ${sets.join(', ')}: ${sayBar(bar, reader)}`),
    ];
  }
  return [
    `${head} ${shiftWords(piece, reader)}`,
    ...fails.map((finding) => `       ${findingLine(finding, reader)}`),
    ...changes.map((change) => `       ${sayChange(change, reader)}`),
    ...differs.map((each) => `       ${sayDiffers(each, reader)}`),
  ];
};

/** In the units and words of the house that the show leaves: it is read there. */
export const fitText = (fit: Fit, { from, to }: FitAsked): string => {
  const reader: House = { ...to.house, units: from.house.units, words: from.house.words };
  const isDemo = from.house.demo || to.house.demo;
  const letter = { show: from.show.name, house: to.house.name, reader: to.house };
  const hung = fit.pieces.filter((piece) => piece.to !== null).length;
  return [
    ...(isDemo ? ['DEMO: an invented house and show'] : []),
    `WHAT IF: ${from.show.name} in ${to.house.name}`,
    '',
    ...fit.pieces.flatMap((piece) => pieceLines(piece, reader)),
    '',
    'The house as a whole:',
    ...fit.fails.map((finding) => `  ${findingLine(finding, reader)}`),
    ...fit.differs.map((each) => `  ${sayDiffers(each, reader)}`),
    '',
    questionLetter(fit.questions, letter),
    `${hung} of ${fit.pieces.length} pieces hang. NOT AN ORDER OF WORK.`,
    '',
  ].join('\n');
};
