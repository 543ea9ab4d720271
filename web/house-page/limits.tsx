/** What the house allows and where its stage stands; each value with its basis and source. */

import type { Basis, House, Known } from '#house';
import type { Rounding } from '#quantities';
import { basisWords, sayMeasure } from '#sheets';
import { message, phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { knownWords, type SayHow } from './known-words.ts';
import { type RuledColumn, RuledTable } from './ruled-table.tsx';

type Line = {
  readonly words: string;
  readonly known: Known<number> | Known<boolean>;
  readonly kind: SayHow['kind'];
  readonly round?: Rounding;
  /** One more digit, where a share is of a per cent or less. */
  readonly fine?: boolean;
};

const columnsIn = (house: House): readonly RuledColumn[] => [
  { head: phrase(house, 'what') },
  { head: phrase(house, 'value'), isNumber: true },
  { head: phrase(house, 'basis') },
  { head: phrase(house, 'source') },
];

const rowsOf = (lines: readonly Line[], house: House) =>
  lines.map(({ words, known, kind, round = 'nearest', fine = false }) => {
    const how = { kind, round, style: fine ? 'fine' : 'sheet' } as const;
    const { value, basis, source } = knownWords(known, house, how);
    return { key: words, cells: [phrase(house, words), value, basis, source] };
  });

const handlingLines = ({ rules }: House): readonly Line[] => [
  {
    words: message('rope lock, most imbalance'),
    known: rules.lockLimit,
    kind: 'force',
    round: 'down',
  },
  {
    words: message('rope lock, tested again after'),
    known: rules.lockTestEverySeconds,
    kind: 'duration',
  },
  {
    words: message('hand line, working load'),
    known: rules.handLineLimit,
    kind: 'force',
    round: 'down',
  },
  {
    words: message('pull of one person, brief'),
    known: rules.pullBrief,
    kind: 'force',
    round: 'down',
  },
  {
    words: message('pull of one person, steady'),
    known: rules.pullSteady,
    kind: 'force',
    round: 'down',
  },
  { words: message('people on one hand line'), known: rules.peoplePerHandLine, kind: 'count' },
  { words: message('friction until measured, share'), known: rules.frictionShare, kind: 'ratio' },
  {
    words: message('friction until measured, fixed'),
    known: rules.frictionConstant,
    kind: 'force',
  },
];

const hardwareLines = ({ rules }: House): readonly Line[] => [
  { words: message('wire rope clips forbidden'), known: rules.clipsForbidden, kind: 'flag' },
  {
    words: message('lift line, breaking strength over its load'),
    known: rules.lineDesignFactor,
    kind: 'number',
  },
  {
    words: message('sheave, least diameter over that of its line'),
    known: rules.sheaveRatio,
    kind: 'number',
  },
  { words: message('fleet angle, most'), known: rules.fleetAngleLimit, kind: 'angle' },
  {
    words: message('added to the loads of a moving set'),
    known: rules.movingShare,
    kind: 'ratio',
  },
  {
    words: message('sag between two lines, most'),
    known: rules.sagLimit,
    kind: 'ratio',
    fine: true,
  },
  { words: message('a record is stale after'), known: rules.staleAfterSeconds, kind: 'duration' },
];

const toleranceWords = (house: House): string => {
  const given = Object.entries(house.rules.toleranceByBasis).map(([basis, share]) => {
    // The English note names a basis as the document does.
    const name = house.tongue === undefined ? basis : basisWords(basis as Basis, house);
    return `${name} ± ${sayMeasure({ value: share, kind: 'ratio' }, house)}`;
  });
  return given.length === 0
    ? phrase(house, 'No tolerance is given by basis.')
    : phrase(house, 'Where a value gives no tolerance of its own: {given}.', {
        given: given.join(', '),
      });
};

export const RuleTable = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Rules of the house')}
      note={tell('The house sets these itself; none has a default. {tolerances}', {
        tolerances: toleranceWords(house),
      })}
      columns={columnsIn(house)}
      rows={rowsOf([...handlingLines(house), ...hardwareLines(house)], house)}
      empty={tell('No rules.')}
    />
  );
};

const stageLines = ({ stage }: House): readonly Line[] => [
  { words: message('opening, width'), known: stage.openingWidth, kind: 'length' },
  { words: message('opening, height'), known: stage.openingHeight, kind: 'length' },
  { words: message('back wall, from the opening'), known: stage.backWall, kind: 'length' },
  { words: message('grid, height'), known: stage.gridHeight, kind: 'length' },
  { words: message('loft blocks, height'), known: stage.loftBlockHeight, kind: 'length' },
  { words: message('head blocks, height'), known: stage.headBlockHeight, kind: 'length' },
];

/** Across the stage a number has no sign on screen, but a side. */
const acrossLine = (house: House): readonly string[] => {
  const { operatingX } = house.stage;
  const words = phrase(house, 'operating wall, from the centre line');
  if (!operatingX.known) return [words, phrase(house, 'unknown'), '', operatingX.why ?? ''];
  const said = knownWords({ ...operatingX, value: Math.abs(operatingX.value) }, house, {
    kind: 'length',
  });
  const names = { length: said.value };
  const place =
    operatingX.value < 0
      ? phrase(house, '{length} stage right', names)
      : phrase(house, '{length} stage left', names);
  return [words, place, said.basis, said.source];
};

export const StageTable = () => {
  const tell = useTell();
  const { house } = useWork();
  const across = acrossLine(house);
  return (
    <RuledTable
      title={tell('Stage')}
      columns={columnsIn(house)}
      rows={[...rowsOf(stageLines(house), house), { key: 'operating wall', cells: across }]}
      empty={tell('Nothing is known of the stage.')}
    />
  );
};
