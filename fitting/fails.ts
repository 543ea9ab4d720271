/** What the rules say of the show in the other house, and did not say of it here. */
import type { Finding, Level } from '#findings';
import { LEVELS } from '#findings';
import type { Mapping } from './types.ts';

/** A value that nobody knows is a question, and what is recorded there is no matter of the show. */
const isOfShow = ({ code, level }: Finding): boolean =>
  code !== 'UNK-001' && !code.startsWith('STA-') && level !== 'note';

const graver = (one: Level, other: Level): boolean => LEVELS.indexOf(one) > LEVELS.indexOf(other);

const keyOf = ({ code, at }: Finding, set: string | undefined): string =>
  JSON.stringify([code, set ?? '', at.item ?? '']);

const worstBy = (findings: readonly Finding[]): ReadonlyMap<string, Level> => {
  const worst = new Map<string, Level>();
  for (const finding of findings) {
    const key = keyOf(finding, finding.at.set);
    const before = worst.get(key);
    if (before === undefined || graver(finding.level, before)) worst.set(key, finding.level);
  }
  return worst;
};

export type NewFindings = {
  /** By the set that the piece leaves. */
  readonly ofPiece: ReadonlyMap<string, readonly Finding[]>;
  readonly ofHouse: readonly Finding[];
};

/** New, or graver than it was of the same piece. Sets that hang nothing there say nothing. */
export const newFindings = (
  before: readonly Finding[],
  after: readonly Finding[],
  mapping: Mapping,
): NewFindings => {
  const said = worstBy(before);
  const leaves = new Map(Object.entries(mapping).map(([from, to]) => [to, from]));
  const isNew = (finding: Finding, from: string | undefined): boolean => {
    const old = said.get(keyOf(finding, from));
    return old === undefined || graver(finding.level, old);
  };
  const ofPiece = new Map<string, Finding[]>();
  const ofHouse: Finding[] = [];
  for (const finding of after.filter(isOfShow)) {
    const { set } = finding.at;
    if (set === undefined) {
      if (isNew(finding, undefined)) ofHouse.push(finding);
      continue;
    }
    const from = leaves.get(set);
    if (from === undefined || !isNew(finding, from)) continue;
    ofPiece.set(from, [...(ofPiece.get(from) ?? []), finding]);
  }
  return { ofPiece, ofHouse };
};
