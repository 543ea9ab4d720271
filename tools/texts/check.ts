/** Every text of the code stands in every catalogue, and nothing else does. */
import type { Check } from '../tidy/fault.ts';
import { type Catalogue, faultsOfCatalogue } from './catalogue.ts';
import { messagesIn } from './gather.ts';

export const CATALOGUES = [{ language: 'de', path: 'languages/german.json' }] as const;

const SHOWN = 50;

export const texts: Check = (sources) => {
  const messages = messagesIn(sources);
  return CATALOGUES.flatMap(({ language, path }) => {
    const kept = sources.find((source) => source.path === path);
    if (kept === undefined) {
      return [{ file: path, line: 1, what: 'is not there', wanted: 'node tools/texts/main.ts' }];
    }
    const lines = kept.text.split('\n');
    const lineOf = (text: string): number =>
      lines.findIndex((line) => line.trimStart().startsWith(`${JSON.stringify(text)}:`)) + 1;
    return faultsOfCatalogue(messages, JSON.parse(kept.text) as Catalogue, language).map(
      ({ text, what }) => ({
        file: path,
        line: Math.max(1, lineOf(text)),
        what: `"${text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text}" ${what}`,
        wanted: 'a text like the English one; node tools/texts/main.ts adds and removes',
      }),
    );
  });
};
