/** Our sentences with names put in: the sentence turns for a UK house, the names never do. */
import type { House } from '#house';
import { assert } from '#outcome';
import { inHouseWords } from './trade-translation.ts';

/** Fills `{name}`; a hole that nothing fills is a defect. */
export const filled = (
  sentence: string,
  house: Pick<House, 'words'>,
  names: Readonly<Record<string, string>> = {},
): string =>
  inHouseWords(sentence, house).replace(/\{(\w+)\}/g, (_, name: string) => {
    const said = names[name];
    assert(said !== undefined, `"${sentence}" says {${name}}`);
    return said;
  });
