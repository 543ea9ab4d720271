/** Which rows are shown. A row never goes while a person works on it, and a new match comes. */
import { worstLevel } from '#findings';
import { unreachable } from '#outcome';
import type { HangFamily } from '#show';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { findableText, type Telling } from './cell-text.ts';
import { blockedWords, standingOf } from './standing-words.ts';

export const USES = ['any', 'hung', 'empty', 'keptEmpty', 'spare', 'blocked'] as const;
export const FINDINGS_ASKED = ['any', 'some', 'caution', 'stop'] as const;

export type Use = (typeof USES)[number];
export type FindingsAsked = (typeof FINDINGS_ASKED)[number];

export type Filter = {
  readonly text: string;
  readonly family: HangFamily | 'any';
  readonly use: Use;
  readonly findings: FindingsAsked;
};

export const NO_FILTER: Filter = { text: '', family: 'any', use: 'any', findings: 'any' };

export const isFiltering = ({ text, family, use, findings }: Filter): boolean =>
  text.trim() !== '' || family !== 'any' || use !== 'any' || findings !== 'any';

/** Letters without their accents and their case, so that a name is found as it is remembered. */
const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replaceAll(/\p{Mark}+/gu, '')
    .toLowerCase();

/** Every word that is asked for, in whatever order; each anywhere in the row. */
export const isFound = (each: SetReckoning, text: string, telling: Telling): boolean => {
  const words = plain(text).split(/\s+/).filter(Boolean);
  const all = plain(findableText(each, telling));
  return words.length > 0 && words.every((word) => all.includes(word));
};

const isOfUse = (each: SetReckoning, use: Use, { house }: Telling): boolean => {
  const standing = standingOf(each);
  switch (use) {
    case 'any':
      return true;
    case 'hung':
      return standing === 'hung';
    case 'empty':
      return standing !== 'hung';
    case 'keptEmpty':
      return standing === 'keptEmpty';
    case 'spare':
      return standing === 'spare' && blockedWords(each, house).length === 0;
    case 'blocked':
      return blockedWords(each, house).length > 0;
    default:
      return unreachable(use);
  }
};

const hasFindings = ({ findings }: SetReckoning, asked: FindingsAsked): boolean => {
  const worst = worstLevel(findings);
  switch (asked) {
    case 'any':
      return true;
    case 'some':
      return worst !== null;
    case 'caution':
      return worst === 'caution' || worst === 'stop';
    case 'stop':
      return worst === 'stop';
    default:
      return unreachable(asked);
  }
};

export const isMatch = (each: SetReckoning, filter: Filter, telling: Telling): boolean =>
  (filter.family === 'any' || each.set.hang?.family === filter.family) &&
  isOfUse(each, filter.use, telling) &&
  hasFindings(each, filter.findings) &&
  (filter.text.trim() === '' || isFound(each, filter.text, telling));
