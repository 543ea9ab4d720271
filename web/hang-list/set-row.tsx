/** One set of the hang list: what hangs, what it comes to, and how it balances. */

import { memo } from 'react';
import { sliceDrawing } from '#drawings';
import type { House } from '#house';
import { Link } from '../address/link.tsx';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { twoTrims } from '../editing/trims.ts';
import { ReadCell } from '../grid/read-cell.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import type { Column } from './columns.ts';
import { FindingsWord } from './findings-word.tsx';
import { GRID, overRows } from './grid-layout.ts';
import { DepthCell, FamilyCell, NameCell, TrimCell } from './hang-cells.tsx';
import { KnownBy } from './known-by.tsx';
import {
  balanceAt,
  brickWords,
  hungWords,
  imbalanceWords,
  lengthWords,
  stackWords,
} from './row-words.ts';
import { emptyWord } from './standing-words.ts';

export type RowProps = {
  readonly each: SetReckoning;
  readonly house: House;
  readonly nowMs: number;
  readonly railOrder: readonly string[];
  /** Imbalance at either edge of the slices, the same for every row. */
  readonly edgeN: number;
  readonly isOpen: boolean;
  readonly isInHand: boolean;
  /** Rows lie over those that follow them: the first of twelve has twelve. */
  readonly over: number;
  readonly onOpen: (set: string) => void;
};

const SLICE = { width: 146, height: 22 };

/** A figure that nobody types: it can be reached and read, and says plainly when it is unknown. */
const Figure = ({ column, words }: { column: Column; words: string | null }) => {
  const tell = useTell();
  return (
    <ReadCell className="number" column={column}>
      {words ?? <span className="unknown">{tell('unknown')}</span>}
    </ReadCell>
  );
};

const Nothing = ({ column }: { column: Column }) => {
  const tell = useTell();
  return (
    <ReadCell className="number quiet" column={column}>
      <span aria-hidden="true">–</span>
      <span className="only-said">{tell('none')}</span>
    </ReadCell>
  );
};

const SetNumber = ({ each }: { each: SetReckoning }) => {
  const tell = useTell();
  return (
    <th {...GRID.rowHead} scope="row" className="set-number" data-col="set">
      <Link
        to={{ kind: 'set', set: each.id }}
        name={tell('Set {id}, open it', { id: each.id })}
        tabIndex={-1}
        isCell
      >
        {each.id}
      </Link>
    </th>
  );
};

const Slice = ({ each, house, edgeN }: RowProps) => {
  const { imbalance } = each.set.recorded;
  const nowN =
    imbalance.known && imbalance.value.low === imbalance.value.high
      ? { nowN: imbalance.value.low }
      : {};
  return (
    <td {...GRID.cell} className="slice" data-col="balance">
      {each.set.bare.known ? (
        <DrawingView drawing={sliceDrawing(each.set, house, { ...SLICE, edgeN, ...nowN })} />
      ) : null}
    </td>
  );
};

type AtProps = {
  readonly each: SetReckoning;
  readonly house: House;
  readonly which: 'low' | 'high';
  readonly column: Column;
};

const At = ({ each, house, which, column }: AtProps) => {
  const { hang } = each.set;
  const placed = hang && twoTrims(hang)[which];
  if (hang === null || placed === null) return <Nothing column={column} />;
  const balance = balanceAt(each.set, placed.trim);
  if (balance === undefined) {
    return each.set.bare.known && hang.deadHungAt === null ? (
      <Figure column={column} words={null} />
    ) : (
      <Nothing column={column} />
    );
  }
  const { size, side } = imbalanceWords(balance.imbalance, house);
  return (
    <ReadCell className="number" column={column}>
      <b>{size}</b> <small>{side}</small>
    </ReadCell>
  );
};

const Bricks = ({ each, house }: Pick<RowProps, 'each' | 'house'>) => {
  const tell = useTell();
  const words = brickWords(each.set);
  if (words === null) {
    const takesThem = each.set.bare.known && each.set.hang?.deadHungAt === null;
    return takesThem ? <Figure column="bricks" words={null} /> : <Nothing column="bricks" />;
  }
  return (
    <ReadCell className="number bricks" column="bricks">
      {words.planned}
      {words.program === null ? null : (
        <small className="program">
          {' '}
          {tell(' program: {program}', { program: words.program })}
        </small>
      )}
      <span className="only-said">{house.words === 'US' ? tell(' bricks') : tell(' weights')}</span>
    </ReadCell>
  );
};

const Hung = (props: RowProps) => {
  const tell = useTell();
  const { each, house, isOpen, onOpen } = props;
  const { hang } = each.set;
  if (hang === null) return null;
  const trims = twoTrims(hang);
  const count = hang.items.length;
  return (
    <>
      <td {...GRID.cell} className="items-button" data-col="items">
        <button
          type="button"
          className="as-words"
          data-cell=""
          tabIndex={-1}
          aria-expanded={isOpen}
          onClick={() => onOpen(each.id)}
        >
          {count === 1 ? tell('1 item') : tell('{count} items', { count })}
          <span className="only-said"> {tell(' of set {id}', { id: each.id })}</span>
        </button>
      </td>
      <FamilyCell each={each} />
      <TrimCell each={each} house={house} placed={trims.low} which="in" />
      <TrimCell each={each} house={house} placed={trims.high} which="out" />
      <DepthCell each={each} house={house} />
      <Figure column="hung" words={hungWords(each.set, house)} />
      <Bricks each={each} house={house} />
      {each.set.bare.known && hang.deadHungAt === null ? (
        <Figure column="stack" words={stackWords(each.set, house)} />
      ) : (
        <Nothing column="stack" />
      )}
      <Slice {...props} />
      <At each={each} house={house} which="low" column="atIn" />
      <At each={each} house={house} which="high" column="atOut" />
    </>
  );
};

/** Columns in which an empty set has nothing to say; arrows pass through them all the same. */
const BEFORE_SLICE: readonly Column[] = ['in', 'out', 'depth', 'hung', 'bricks', 'stack'];
const BEHIND_SLICE: readonly Column[] = ['atIn', 'atOut'];

const Blank = ({ columns }: { readonly columns: readonly Column[] }) =>
  columns.map((column) => <ReadCell key={column} column={column} />);

const Empty = (props: RowProps) => {
  const tell = useTell();
  return (
    <>
      <td {...GRID.cell} className="items-button" data-col="items">
        <Link to={{ kind: 'whichSet', piece: null }} isCell tabIndex={-1}>
          {tell('Which set?')}
        </Link>
      </td>
      <ReadCell column="kind" className="quiet">
        {emptyWord(props.each, props.house)}
      </ReadCell>
      <Blank columns={BEFORE_SLICE} />
      <Slice {...props} />
      <Blank columns={BEHIND_SLICE} />
    </>
  );
};

const classOf = ({ each, isInHand, isOpen }: RowProps): string =>
  [
    each.set.hang === null ? 'is-empty' : 'is-hung',
    ...(isInHand ? ['in-hand'] : []),
    ...(isOpen ? ['is-open'] : []),
  ].join(' ');

export const SetRow = memo((props: RowProps) => {
  const { each, house, nowMs, railOrder } = props;
  const { y } = each.set.lineSet;
  return (
    <tr
      {...GRID.row}
      data-row=""
      data-set={each.id}
      className={classOf(props)}
      style={overRows(props.over)}
    >
      <SetNumber each={each} />
      <Figure column="position" words={lengthWords(y, house)} />
      <NameCell each={each} house={house} railOrder={railOrder} />
      {each.set.hang === null ? <Empty {...props} /> : <Hung {...props} />}
      <ReadCell className="findings" column="findings">
        <FindingsWord findings={each.findings} />
      </ReadCell>
      <ReadCell className="known-by" column="knownBy">
        <KnownBy set={each.set} house={house} nowMs={nowMs} />
      </ReadCell>
    </tr>
  );
});
SetRow.displayName = 'SetRow';
