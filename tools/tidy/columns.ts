/** Lines of at most 100 columns, so that two files stand side by side. */
import type { Check } from './fault.ts';
import { isGenerated } from './sources.ts';

const LIMIT = 100;

/** Data and drawings are not read line by line; a table or an address cannot be broken. */
const isProse = (path: string): boolean => /\.(ts|tsx|mjs|cjs|css|md)$/.test(path);
const isUnbreakable = (line: string): boolean => /https?:\/\/\S+/.test(line) || /^\s*\|/.test(line);

export const columns: Check = (sources) =>
  sources
    .filter(({ path }) => isProse(path) && !isGenerated(path))
    .flatMap(({ path, text }) =>
      text.split('\n').flatMap((line, index) => {
        const width = [...line].length;
        if (width <= LIMIT || isUnbreakable(line)) return [];
        return [
          { file: path, line: index + 1, what: `${width} columns`, wanted: `at most ${LIMIT}` },
        ];
      }),
    );
