/** What a change comes to, in a few sentences that can be read aloud at the rail. */
import type { House } from '#house';
import { sayFinding, sayMeasure } from '#sheets';
import { message, phrase, phraseCount } from '#texts';
import type { FindingChange } from './findings-apart.ts';
import { bricksApart, type Side } from './side-rows.ts';

/** `3 full bricks more (25 lb each)`. */
const countOf = (house: House, kind: string, count: number): string => {
  const named = house.brickKinds.find(({ id }) => id === kind);
  const size = Math.abs(count);
  const name = named?.name ?? kind;
  if (!named?.mass.known) {
    return count > 0
      ? phraseCount(house, size, ['{count} {name} brick more', '{count} {name} bricks more'], {
          name,
        })
      : phraseCount(house, size, ['{count} {name} brick fewer', '{count} {name} bricks fewer'], {
          name,
        });
  }
  const mass = sayMeasure({ value: named.mass.value, kind: 'mass' }, house, { style: 'fine' });
  return count > 0
    ? phraseCount(
        house,
        size,
        ['{count} {name} brick more ({mass} each)', '{count} {name} bricks more ({mass} each)'],
        { name, mass },
      )
    : phraseCount(
        house,
        size,
        ['{count} {name} brick fewer ({mass} each)', '{count} {name} bricks fewer ({mass} each)'],
        { name, mass },
      );
};

const brickSentence = (one: Side, other: Side): string | null => {
  const apart = bricksApart(one, other);
  if (apart === null) return phrase(other.house, 'The bricks are not known.');
  if (apart.length === 0) return phrase(other.house, 'The bricks stay as they are.');
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
    ? phrase(other.house, 'Hand pull to start it at most {pull}, as it was.', { pull: after })
    : phrase(other.house, 'Hand pull to start it at most {pull}, was {old}.', {
        pull: after,
        old: before,
      });
};

const OF_SET = {
  new: message('New, set {id}'),
  gone: message('No longer said, set {id}'),
  worse: message('Worse, set {id}'),
  better: message('Better, set {id}'),
} as const;

const OF_HOUSE = {
  new: message('New, the house'),
  gone: message('No longer said, the house'),
  worse: message('Worse, the house'),
  better: message('Better, the house'),
} as const;

const OF_HOUSE_SHORT = {
  new: message('New, house'),
  gone: message('No longer said, house'),
  worse: message('Worse, house'),
  better: message('Better, house'),
} as const;

const findingSentence = (change: FindingChange, house: House): string => {
  const { finding } = change;
  const { title } = sayFinding(finding, house);
  return `${changeWord(change, house, OF_HOUSE)}: ${title} [${finding.code}].`;
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
    rest > 0 ? phrase(other.house, '{count} more checks change, below.', { count: rest }) : null,
    grave.length === 0 ? phrase(other.house, 'No check changes.') : null,
  ].filter((sentence) => sentence !== null);
};

/** With the figure that was, where a finding is worse or better. */
export const findingDetail = ({ is, finding, before }: FindingChange, house: House): string => {
  const { sentence } = sayFinding(finding, house);
  if (before === null || is === 'gone' || before.measured === null) return sentence;
  const was = phrase(house, 'It was {measured}.', {
    measured: sayMeasure(before.measured, house),
  });
  return `${sentence} ${was}`;
};

/** What became of a finding, and of which set it is; it stands before the finding. */
export const changeWord = (
  { is, finding }: FindingChange,
  house: House,
  ofHouse: Readonly<Record<FindingChange['is'], string>> = OF_HOUSE_SHORT,
): string =>
  finding.at.set === undefined
    ? phrase(house, ofHouse[is])
    : phrase(house, OF_SET[is], { id: finding.at.set });
