/** The blocks of a sheet as they will be printed, in elements that say what they are. */

import type { ReactNode } from 'react';
import { unreachable } from '#outcome';
import type {
  Block,
  Columns,
  InkLines,
  List,
  Notice,
  Paragraph,
  Proofs,
  Tickets,
  Words,
} from '#sheets';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { keyAt } from './key-at.ts';
import { TableView } from './table-view.tsx';
import { WordsView } from './words-view.tsx';

/** Blocks of a sheet never change in place, so their order names them. */
export const Blocks = ({ blocks }: { readonly blocks: readonly Block[] }): ReactNode =>
  blocks.map((block, index) => <BlockView key={keyAt(index)} block={block} />);

const ParagraphView = ({ words, isNote = false, isEdge = false }: Paragraph) => {
  const size = isEdge ? 'leaf-edge' : isNote ? 'leaf-note' : undefined;
  return (
    <p className={size}>
      <WordsView words={words} />
    </p>
  );
};

const MARK_SIZE = 28;

const NoticeView = ({ degree, heading, words }: Notice) => (
  <div className={`leaf-notice ${degree}`}>
    {degree === 'caution' || degree === 'danger' ? <Glyph name={degree} size={MARK_SIZE} /> : null}
    <div>
      <h4>{heading}</h4>
      {words.length === 0 ? null : (
        <p>
          <WordsView words={words} />
        </p>
      )}
    </div>
  </div>
);

const Items = ({ items }: { readonly items: readonly Words[] }) => (
  <ul>
    {items.map((words, index) => (
      <li key={keyAt(index)}>
        <WordsView words={words} />
      </li>
    ))}
  </ul>
);

const ListView = ({ heading, items }: List) => (
  <div className="leaf-list">
    <h4>{heading}</h4>
    <Items items={items} />
  </div>
);

const ProofsView = ({ items }: Proofs) => (
  <div className="leaf-proofs">
    <Items items={items} />
  </div>
);

const InkLinesView = ({ count }: InkLines) => {
  const tell = useTell();
  return (
    <div className="leaf-ink">
      <p>
        <span>{tell('Ink corrections')}</span>
        <span>{tell('initials')}</span>
      </p>
      {Array.from({ length: count }, (_, line) => (
        <div key={keyAt(line)} className="leaf-ink-line" aria-hidden="true">
          <span />
          <span />
        </div>
      ))}
    </div>
  );
};

const ColumnsView = ({ shares, columns }: Columns) => (
  <div
    className="leaf-columns"
    style={{ gridTemplateColumns: shares.map((share) => `minmax(0, ${share}fr)`).join(' ') }}
  >
    {columns.map((blocks, index) => (
      <div key={keyAt(index)}>
        <Blocks blocks={blocks} />
      </div>
    ))}
  </div>
);

const TicketsView = ({ perRow, tickets }: Tickets) => (
  <ul className="leaf-tickets" style={{ gridTemplateColumns: `repeat(${perRow}, minmax(0, 1fr))` }}>
    {tickets.map((blocks, index) => (
      <li key={keyAt(index)}>
        <Blocks blocks={blocks} />
      </li>
    ))}
  </ul>
);

const BlockView = ({ block }: { readonly block: Block }): ReactNode => {
  switch (block.kind) {
    case 'heading':
      return <h3>{block.text}</h3>;
    case 'text':
      return <ParagraphView {...block} />;
    case 'notice':
      return <NoticeView {...block} />;
    case 'drawing':
      return <DrawingView drawing={block.drawing} className="leaf-drawing" />;
    case 'table':
      return <TableView table={block} />;
    case 'list':
      return <ListView {...block} />;
    case 'proofs':
      return <ProofsView {...block} />;
    case 'inkLines':
      return <InkLinesView {...block} />;
    case 'columns':
      return <ColumnsView {...block} />;
    case 'tickets':
      return <TicketsView {...block} />;
    default:
      return unreachable(block);
  }
};
