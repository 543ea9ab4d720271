/** Sentences are written in the US words of the trade; a UK house reads its own. */

/** Longest first, so that "pipe weight" is not read as something else. */
const UK_WORDS: readonly (readonly [us: string, uk: string])[] = [
  ['line set schedule', 'hanging plot'],
  ['spreader plates', 'spreaders'],
  ['spreader plate', 'spreader'],
  ['tension block', 'tension pulley'],
  // A chain, and lengths of lines, whatever a height is called.
  ['trim chain', 'trim chain'],
  ['trims of the lines', 'trims of the lines'],
  ['plaster line', 'setting line'],
  ['pipe weight', 'bar weight'],
  ['lift lines', 'suspension wires'],
  ['lift line', 'suspension wire'],
  ['hand lines', 'hauling lines'],
  ['hand line', 'hauling line'],
  ['line sets', 'flying sets'],
  ['line set', 'flying set'],
  ['dead-hung', 'fixed'],
  ['changeover', 'changeover'],
  ['load-in', 'fit-up'],
  ['battens', 'bars'],
  ['batten', 'bar'],
  ['arbors', 'cradles'],
  ['arbor', 'cradle'],
  ['bricks', 'weights'],
  ['brick', 'weight'],
  ['trims', 'deads'],
  ['trim', 'dead'],
  ['strike it', 'get it out'],
  ['strike', 'get-out'],
  ['deck', 'stage'],
];

const BY_US_WORD = new Map(UK_WORDS);
const ANY_US_WORD = new RegExp(`\\b(${UK_WORDS.map(([us]) => us).join('|')})\\b`, 'gi');
/** `{trim}` names a fact; it is filled in later and is no word to translate. */
const PLACEHOLDER = /(\{[^}]*\})/;

const likeCapital = (word: string, model: string): string =>
  /^[A-Z]/.test(model) ? `${word.charAt(0).toUpperCase()}${word.slice(1)}` : word;

const toUk = (text: string): string =>
  text.replace(ANY_US_WORD, (found) =>
    likeCapital(BY_US_WORD.get(found.toLowerCase()) ?? found, found),
  );

/** Our own sentence; a `{name}` in it is filled in later and is left alone. */
export const inUkWords = (sentence: string): string =>
  sentence
    .split(PLACEHOLDER)
    .map((part) => (part.startsWith('{') ? part : toUk(part)))
    .join('');
