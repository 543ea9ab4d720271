/** What a change comes to, in a few sentences that can be read aloud at the rail. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { inHouseWords, sayFinding, sayMeasure } from '#sheets';
import type { FindingChange } from './findings-apart.ts';
import { bricksApart, type Side } from './side-rows.ts';

/** `3 full bricks more (25 lb each)`. */
const countOf = (house: House, kind: string, count: number): string => {
  const named = house.brickKinds.find(({ id }) => id === kind);
  const size = Math.abs(count);
  const word = tradeWord(house, size === 1 ? 'brick' : 'bricks');
  const mass = named?.mass.known
    ? ` (${sayMeasure({ value: named.mass.value, kind: 'mass' }, house, { style: 'fine' })} each)`
    : '';
  return `${size} ${named?.name ?? kind} ${word} ${count > 0 ? 'more' : 'fewer'}${mass}`;
};

const brickSentence = (one: Side, other: Side): string | null => {
  const apart = bricksApart(one, other);
  if (apart === null) return inHouseWords('The bricks are not known.', other.house);
  if (apart.length === 0) return inHouseWords('The bricks stay as they are.', other.house);
  return `${apart.map(({ kind, count }) => countOf(other.house, kind, count)).join(', ')}.`;
};

const pullSentence = (one: Side, other: Side): string | null => {
  const pulls = (side: Side) => (side.set.plan.known ? side.set.plan.value.pulls : null);
  const [was, is] = [pulls(one), pulls(other)];
  if (!was?.known || !is?.known) return null;
  const most = ({ out, in: inward }: typeof is.value): number =>
    Math.max(Math.abs(out), Math.abs(inward));
  const said = (valueN: number): string =>
    sayMeasure({ value: valueN, kind: 'force' }, other.house, { round: 'up' });
  const [before, after] = [said(most(was.value)), said(most(is.value))];
  return before === after
    ? `Hand pull to start it at most ${after}, as it was.`
    : `Hand pull to start it at most ${after}, was ${before}.`;
};

const WORDS = {
  new: 'New',
  gone: 'No longer said',
  worse: 'Worse',
  better: 'Better',
} as const;

const findingSentence = ({ is, finding }: FindingChange, house: House): string => {
  const { title } = sayFinding(finding, house);
  const set = finding.at.set === undefined ? 'the house' : `set ${finding.at.set}`;
  return `${WORDS[is]}, ${set}: ${title} [${finding.code}].`;
};

/** At most so many findings are read aloud; all of them stand below. */
const MOST_FINDINGS = 4;

export const changeSentences = (
  one: Side,
  other: Side,
  changes: readonly FindingChange[],
): readonly string[] => {
  const grave = changes.filter(({ finding }) => finding.level !== 'note');
  const rest = grave.length - MOST_FINDINGS;
  return [
    brickSentence(one, other),
    pullSentence(one, other),
    ...grave.slice(0, MOST_FINDINGS).map((change) => findingSentence(change, other.house)),
    rest > 0 ? `${rest} more checks change, below.` : null,
    grave.length === 0 ? 'No check changes.' : null,
  ].filter((sentence) => sentence !== null);
};

/** With the figure that was, where a finding is worse or better. */
export const findingDetail = ({ is, finding, before }: FindingChange, house: House): string => {
  const { sentence } = sayFinding(finding, house);
  if (before === null || is === 'gone' || before.measured === null) return sentence;
  return `${sentence} It was ${sayMeasure(before.measured, house)}.`;
};

export const changeWord = (is: FindingChange['is']): string => WORDS[is];
