/** A catalogue of one language against what the code says: missing, unused, other holes. */
import { isPluralElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { byText } from '../papers/paper.ts';
import type { Message } from './gather.ts';

export type Catalogue = Readonly<Record<string, string>>;

export type CatalogueFault = { readonly text: string; readonly what: string };

type Elements = ReturnType<typeof parse>;

/** Every name that a message leaves open, in its branches too. */
const namesIn = (elements: Elements): readonly string[] =>
  elements.flatMap((element) => {
    if (element.type === TYPE.argument) return [element.value];
    if (isPluralElement(element)) {
      const branches = Object.values(element.options).map(({ value }) => value);
      return [element.value, ...branches.flatMap(namesIn)];
    }
    return element.type === TYPE.literal || element.type === TYPE.pound ? [] : ['?'];
  });

const setOf = (elements: Elements): string =>
  [...new Set(namesIn(elements))].toSorted(byText).join(', ');

/** Forms of number that a language tells apart, and that a plural must have. */
const formsOf = (language: string): readonly string[] =>
  new Intl.PluralRules(language).resolvedOptions().pluralCategories;

const isPlural = (text: string): boolean => text.startsWith('{count, plural,');

const faultOfPlural = (elements: Elements, language: string): string | null => {
  const [element, ...others] = elements;
  if (element === undefined || !isPluralElement(element) || others.length > 0) {
    return 'a plural is the whole message';
  }
  const missing = formsOf(language).filter((form) => element.options[form] === undefined);
  return missing.length === 0 ? null : `the plural has no form "${missing.join(', ')}"`;
};

/** Spaces at the ends hold a message off its neighbours on the page. */
const endsOf = (text: string): string => `${/^\s*/.exec(text)?.[0]}|${/\s*$/.exec(text)?.[0]}`;

const faultOf = (key: string, text: string, language: string): string | null => {
  if (text === '') return 'is not translated';
  let read: { readonly key: Elements; readonly text: Elements };
  try {
    read = { key: parse(key), text: parse(text) };
  } catch (error) {
    return `is no ICU message: ${String(error)}`;
  }
  const [wanted, found] = [setOf(read.key), setOf(read.text)];
  if (wanted !== found) return `has the holes "${found}" and not "${wanted}"`;
  if (endsOf(key) !== endsOf(text)) return 'begins or ends with other spaces';
  if (isPlural(key) !== isPlural(text)) return 'is a plural on one side only';
  return isPlural(key) ? faultOfPlural(read.text, language) : null;
};

export const faultsOfCatalogue = (
  messages: readonly Message[],
  catalogue: Catalogue,
  language: string,
): readonly CatalogueFault[] => {
  const said = new Set(messages.map(({ text }) => text));
  return [
    ...messages.flatMap(({ text }) => {
      const what = faultOf(text, catalogue[text] ?? '', language);
      return what === null ? [] : [{ text, what }];
    }),
    ...Object.keys(catalogue)
      .filter((text) => !said.has(text))
      .map((text) => ({ text, what: 'is said nowhere any more' })),
  ];
};

/** As it is to be kept: in the order of the code, new texts empty, old ones gone. */
export const nextCatalogue = (messages: readonly Message[], catalogue: Catalogue): Catalogue =>
  Object.fromEntries(messages.map(({ text }) => [text, catalogue[text] ?? '']));
