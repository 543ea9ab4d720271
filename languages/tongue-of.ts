/** A catalogue of ICU messages as a tongue: marks and months by Intl, plurals taken apart once. */
import { isPluralElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { assert } from '#outcome';
import type { Plural, Tongue } from '#texts';

const MONTHS = 12;

const decimalMarkOf = (language: string): '.' | ',' => {
  const parts = new Intl.NumberFormat(language).formatToParts(1.5);
  const mark = parts.find(({ type }) => type === 'decimal')?.value;
  assert(mark === '.' || mark === ',', `${language} has a decimal mark that is read here`);
  return mark;
};

const dateParts = (language: string, month: number) =>
  new Intl.DateTimeFormat(language, {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    timeZone: 'UTC',
  }).formatToParts(new Date(Date.UTC(2026, month, 9)));

const monthOf = (language: string, month: number): string =>
  dateParts(language, month).find(({ type }) => type === 'month')?.value ?? '';

/** `{day}. {month} {year}`. */
const dateOf = (language: string): string =>
  dateParts(language, 0)
    .map(({ type, value }) =>
      type === 'day' || type === 'month' || type === 'year' ? `{${type}}` : value,
    )
    .join('');

/** A text of a message, its holes again as they are written. */
const written = (elements: ReturnType<typeof parse>): string =>
  elements
    .map((element) => {
      if (element.type === TYPE.literal) return element.value;
      if (element.type === TYPE.pound) return '{count}';
      assert(element.type === TYPE.argument, 'a hole of a message is a name and nothing else');
      return `{${element.value}}`;
    })
    .join('');

/** A plural is the whole message: no sentence is put together from parts. */
const readMessage = (text: string): string | Plural => {
  if (!text.startsWith('{count, plural,')) return text;
  const [element, ...others] = parse(text);
  assert(element !== undefined && isPluralElement(element) && others.length === 0, text);
  const forms = Object.entries(element.options).map(([form, { value }]) => [form, written(value)]);
  return { by: element.value, forms: Object.fromEntries(forms) };
};

export const tongueOf = ({
  language,
  texts,
  told = [],
}: {
  readonly language: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly told?: readonly string[];
}): Tongue => ({
  language,
  decimalMark: decimalMarkOf(language),
  months: Array.from({ length: MONTHS }, (_, month) => monthOf(language, month)),
  date: dateOf(language),
  // A text that is not translated yet stays English, and `tidy` is red.
  texts: Object.fromEntries(
    Object.entries(texts)
      .filter(([, text]) => text !== '')
      .map(([key, text]) => [key, readMessage(text)]),
  ),
  told,
});
