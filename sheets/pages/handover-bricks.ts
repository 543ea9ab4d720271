/** Loose bricks against what lay there before, and bricks that no count accounts for. */
import type { House } from '#house';
import type { StackRun } from '#state';
import { phrase, phraseCount } from '#texts';
import type { SheetContext } from '../context.ts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Block, Row, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { bricksWords } from '../words/say-standing.ts';
import { fitted } from './column-shares.ts';
import { galleryBefore, galleryOnRecord, type SetOnRecord } from './handover-record.ts';

const changeWords = (before: number | undefined, now: number | undefined, house: House): Words => {
  if (before === undefined || now === undefined) return [phrase(house, 'not counted')];
  const change = now - before;
  if (change === 0) return [phrase(house, 'none')];
  const words =
    change > 0
      ? phraseCount(house, change, ['{count} more', '{count} more'])
      : phraseCount(house, -change, ['{count} fewer', '{count} fewer']);
  return [strong(words)];
};

/** `12`, or that nobody counted; short where less lies there than is kept for something. */
const numberWords = (count: number | undefined, house: House): Words => [
  count === undefined ? phrase(house, 'not counted') : strong(`${count}`),
];

const keptWords = (kept: number, now: number | undefined, house: House): Words => {
  if (kept === 0) return [phrase(house, 'none')];
  if (now === undefined || now >= kept) return [`${kept}`];
  return [strong(phrase(house, '{kept}, and {short} short', { kept, short: kept - now }))];
};

/** By kind and gallery; a kind that neither count has is left out. */
export const brickTable = (context: SheetContext): readonly Block[] => {
  const { house } = context;
  const rows = house.galleries.flatMap(({ id, name }) => {
    const before = galleryBefore(context, id);
    const now = galleryOnRecord(context, id);
    return house.brickKinds.flatMap((brick): readonly Row[] => {
      const [was, is] = [before?.stock[brick.id], now?.stock[brick.id]];
      const kept = (before?.reserved ?? [])
        .filter(({ kind }) => kind === brick.id)
        .reduce((sum, { count }) => sum + count, 0);
      if (was === undefined && is === undefined && kept === 0) return [];
      return [
        {
          cells: [
            [name],
            [brick.name],
            numberWords(was, house),
            numberWords(is, house),
            changeWords(was, is, house),
            keptWords(kept, is, house),
          ],
          rule: 'hair',
        },
      ];
    });
  });
  if (rows.length === 0) {
    return [{ kind: 'text', words: [phrase(house, 'Nobody has recorded a count here.')] }];
  }
  const right = { align: 'right', share: 0.14 } as const;
  const table = {
    kind: 'table' as const,
    columns: [
      { head: phrase(house, 'Gallery'), align: 'left' as const, share: 0.28 },
      { head: phrase(house, 'Kind'), align: 'left' as const, share: 0.16 },
      { head: phrase(house, 'Before'), ...right },
      { head: phrase(house, 'Now'), ...right },
      { head: phrase(house, 'Difference'), ...right },
      { head: phrase(house, 'Kept back'), ...right },
    ],
    rows,
  };
  return [fitted(table, BODY_WIDTH.portrait)];
};

const countIn = (stack: readonly StackRun[], kind: string): number =>
  stack
    .filter((run) => run.kind === kind && run.tag !== 'spreader')
    .reduce((sum, { count }) => sum + count, 0);

/** Loose and on arbors together; null where a set or a gallery is not counted. */
const foundOf = (
  context: SheetContext,
  sets: readonly SetOnRecord[],
  kind: string,
): number | null => {
  const loose = context.house.galleries.map(
    ({ id }) => galleryOnRecord(context, id)?.stock[kind] ?? null,
  );
  const onArbors = sets.map(({ standing }) =>
    standing === null ? null : countIn(standing.stack, kind),
  );
  return [...loose, ...onArbors].reduce<number | null>(
    (sum, count) => (sum === null || count === null ? null : sum + count),
    0,
  );
};

/** What the house owns of a kind, against what is loose and on arbors. */
export const bricksLost = (
  context: SheetContext,
  sets: readonly SetOnRecord[],
): readonly Block[] => {
  const { house, assessment } = context;
  const kinds = assessment.bricks.flatMap(({ kind, owned }) =>
    owned === null ? [] : [{ kind, owned, found: foundOf(context, sets, kind) }],
  );
  if (kinds.length === 0) return [];
  if (kinds.some(({ found }) => found === null)) {
    return [
      said(
        phrase(
          house,
          'Whether any lie elsewhere is not known: not every arbor and gallery is counted.',
        ),
      ),
    ];
  }
  const words = kinds.flatMap(({ kind, owned, found }): readonly string[] => {
    if (found === null || found === owned) return [];
    const names = { bricks: bricksWords(owned, kind, house), found };
    return [
      found < owned
        ? phrase(house, '{bricks} owned, {found} counted: {apart} lie elsewhere.', {
            ...names,
            apart: owned - found,
          })
        : phrase(house, '{bricks} owned, {found} counted: {apart} too many.', {
            ...names,
            apart: found - owned,
          }),
    ];
  });
  return words.length === 0 ? [] : [said(words.join(' '))];
};

const said = (words: string): Block => ({ kind: 'text', words: [words] });
