/** What a cell of the hang list reads as text: to be copied, found, and compared. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { phrase } from '#texts';
import { type PlacedTrim, twoTrims } from '../editing/trims.ts';
import { writtenText } from '../editing/written.ts';
import { at } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import type { Column } from './columns.ts';
import { findingsText } from './findings-text.ts';
import { knownBy } from './known-by-words.ts';
import {
  balanceAt,
  brickWords,
  familyWords,
  hungWords,
  imbalanceWords,
  lengthWords,
  stackWords,
} from './row-words.ts';
import { blockedWords, emptyWord } from './standing-words.ts';

export type Telling = { readonly house: House; readonly nowMs: number };

const UNKNOWN = 'unknown';

const trimText = ({ written }: SetReckoning, placed: PlacedTrim | null): string =>
  placed === null
    ? ''
    : writtenText(at(written ?? undefined, ['trims', placed.index, 'height'])) || UNKNOWN;

/** Only where the set takes bricks at all. */
const ofBricks = (set: SetAssessment, words: string | null): string => {
  if (words !== null) return words;
  return set.bare.known && set.hang?.deadHungAt === null ? UNKNOWN : '';
};

const atTrimText = (set: SetAssessment, placed: PlacedTrim | null, house: House): string => {
  const balance = placed === null ? undefined : balanceAt(set, placed.trim);
  if (balance === undefined) return '';
  const { size, side } = imbalanceWords(balance.imbalance, house);
  return `${size} ${side}`.trim();
};

const ofHouse = (each: SetReckoning, column: Column, { house, nowMs }: Telling): string | null => {
  if (column === 'set') return each.id;
  if (column === 'position') return lengthWords(each.set.lineSet.y, house) ?? UNKNOWN;
  if (column === 'findings') return findingsText(each.findings, house);
  return column === 'knownBy' ? knownBy(each.set, house, nowMs).words : null;
};

/**
 * The text of a cell as it is copied. What is typed goes out as it was typed, with its unit, so
 * that it can be pasted back; the balance is a drawing and has no text.
 */
export const cellText = (each: SetReckoning, column: Column, telling: Telling): string => {
  const text = ofHouse(each, column, telling) ?? hungText(each, column, telling.house);
  return text.replaceAll('\u00a0', ' ');
};

const hungText = (each: SetReckoning, column: Column, house: House): string => {
  const { set } = each;
  const { hang } = set;
  if (hang === null) return '';
  const trims = twoTrims(hang);
  switch (column) {
    case 'item':
      return hang.name;
    case 'items':
      return hang.items.length === 1
        ? phrase(house, '1 item')
        : phrase(house, '{length} items', { length: hang.items.length });
    case 'kind':
      return familyWords(hang.family, house);
    case 'in':
      return trimText(each, trims.low);
    case 'out':
      return trimText(each, trims.high);
    case 'depth':
      return writtenText(at(each.written ?? undefined, ['halfDepth']));
    case 'hung':
      return hungWords(set, house) ?? UNKNOWN;
    case 'bricks':
      return ofBricks(set, brickWords(set)?.planned ?? null);
    case 'stack':
      return ofBricks(set, stackWords(set, house));
    case 'atIn':
      return atTrimText(set, trims.low, house);
    case 'atOut':
      return atTrimText(set, trims.high, house);
    case 'balance':
    case 'set':
    case 'position':
    case 'findings':
    case 'knownBy':
      return '';
    default:
      return unreachable(column);
  }
};

/** All that a person might look a row up by: also its items, and why it is empty or blocked. */
export const findableText = (each: SetReckoning, { house }: Telling): string =>
  [
    each.id,
    each.set.hang?.name ?? `${phrase(house, 'empty')} ${emptyWord(each, house)}`,
    each.set.hang === null ? '' : familyWords(each.set.hang.family, house),
    ...(each.set.hang?.items.map(({ name }) => name) ?? []),
    each.keptEmpty ?? '',
    each.set.hang?.remark ?? '',
    ...blockedWords(each, house),
  ].join('\n');
