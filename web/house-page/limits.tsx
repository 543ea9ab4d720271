/** What the house allows and where its stage stands; each value with its basis and source. */

import { tradeWord } from '#drawings';
import type { House, Known } from '#house';
import type { Rounding } from '#quantities';
import { sayMeasure } from '#sheets';
import { useWork } from '../reckoning/use-work.ts';
import { knownWords, type SayHow } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

type Line = {
  readonly words: string;
  readonly known: Known<number> | Known<boolean>;
  readonly kind: SayHow['kind'];
  readonly round?: Rounding;
  /** One more digit, where a share is of a per cent or less. */
  readonly fine?: boolean;
};

const COLUMNS = [
  { head: 'what' },
  { head: 'value', isNumber: true },
  { head: 'basis' },
  { head: 'source' },
] as const;

const rowsOf = (lines: readonly Line[], house: House) =>
  lines.map(({ words, known, kind, round = 'nearest', fine = false }) => {
    const how = { kind, round, style: fine ? 'fine' : 'sheet' } as const;
    const { value, basis, source } = knownWords(known, house, how);
    return { key: words, cells: [words, value, basis, source] };
  });

const ruleLines = (house: House): readonly Line[] => {
  const { rules } = house;
  const handLine = tradeWord(house, 'handLine');
  return [
    { words: 'rope lock, most imbalance', known: rules.lockLimit, kind: 'force', round: 'down' },
    {
      words: 'rope lock, tested again after',
      known: rules.lockTestEverySeconds,
      kind: 'duration',
    },
    {
      words: `${handLine}, working load`,
      known: rules.handLineLimit,
      kind: 'force',
      round: 'down',
    },
    { words: 'pull of one person, brief', known: rules.pullBrief, kind: 'force', round: 'down' },
    { words: 'pull of one person, steady', known: rules.pullSteady, kind: 'force', round: 'down' },
    { words: `people on one ${handLine}`, known: rules.peoplePerHandLine, kind: 'count' },
    { words: 'friction until measured, share', known: rules.frictionShare, kind: 'ratio' },
    { words: 'friction until measured, fixed', known: rules.frictionConstant, kind: 'force' },
    { words: 'wire rope clips forbidden', known: rules.clipsForbidden, kind: 'flag' },
    {
      words: 'lift line, breaking strength over its load',
      known: rules.lineDesignFactor,
      kind: 'number',
    },
    {
      words: 'sheave, least diameter over that of its line',
      known: rules.sheaveRatio,
      kind: 'number',
    },
    { words: 'fleet angle, most', known: rules.fleetAngleLimit, kind: 'angle' },
    { words: 'added to the loads of a moving set', known: rules.movingShare, kind: 'ratio' },
    { words: 'sag between two lines, most', known: rules.sagLimit, kind: 'ratio', fine: true },
    { words: 'a record is stale after', known: rules.staleAfterSeconds, kind: 'duration' },
  ];
};

const toleranceWords = (house: House): string => {
  const given = Object.entries(house.rules.toleranceByBasis);
  if (given.length === 0) return 'No tolerance is given by basis.';
  const parts = given.map(
    ([basis, share]) => `${basis} ± ${sayMeasure({ value: share, kind: 'ratio' }, house)}`,
  );
  return `Where a value gives no tolerance of its own: ${parts.join(', ')}.`;
};

export const RuleTable = () => {
  const { house } = useWork();
  return (
    <RuledTable
      title="Rules of the house"
      note={`The house sets these itself; none has a default. ${toleranceWords(house)}`}
      columns={COLUMNS}
      rows={rowsOf(ruleLines(house), house)}
      empty="No rules."
    />
  );
};

const stageLines = ({ stage }: House): readonly Line[] => [
  { words: 'opening, width', known: stage.openingWidth, kind: 'length' },
  { words: 'opening, height', known: stage.openingHeight, kind: 'length' },
  { words: 'back wall, from the opening', known: stage.backWall, kind: 'length' },
  { words: 'grid, height', known: stage.gridHeight, kind: 'length' },
  { words: 'loft blocks, height', known: stage.loftBlockHeight, kind: 'length' },
  { words: 'head blocks, height', known: stage.headBlockHeight, kind: 'length' },
];

/** Across the stage a number has no sign on screen, but a side. */
const acrossLine = (house: House): readonly string[] => {
  const { operatingX } = house.stage;
  const words = 'operating wall, from the centre line';
  if (!operatingX.known) return [words, 'unknown', '', operatingX.why ?? ''];
  const said = knownWords({ ...operatingX, value: Math.abs(operatingX.value) }, house, {
    kind: 'length',
  });
  const side = operatingX.value < 0 ? 'stage right' : 'stage left';
  return [words, `${said.value} ${side}`, said.basis, said.source];
};

export const StageTable = () => {
  const { house } = useWork();
  const across = acrossLine(house);
  return (
    <RuledTable
      title="Stage"
      columns={COLUMNS}
      rows={[...rowsOf(stageLines(house), house), { key: 'operating wall', cells: across }]}
      empty="Nothing is known of the stage."
    />
  );
};
