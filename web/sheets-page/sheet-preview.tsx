/**
 * A sheet as it will lie on the table: the same blocks that are printed, on one long page. A unit
 * of a sheet is a point; the page is laid out in points and scaled to the room as a whole.
 */

import { useState } from 'react';
import type { Sheet } from '#sheets';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useWidth } from '../drawing/use-width.ts';
import { useTell } from '../language/use-tell.ts';
import { Blocks } from './block-view.tsx';

/** Letter in points; A4 differs by less than a line of text. */
const PAGE_WIDTH = { portrait: 612, landscape: 792 } as const;
/** Pixels of a screen in a point of paper. */
const FULL_SIZE = 4 / 3;

const SheetHead = ({ sheet }: { readonly sheet: Sheet }) => (
  <header className="leaf-head">
    <div>
      <p>{sheet.title}</p>
      <h2>
        {sheet.number === null ? null : <span className="leaf-number">{sheet.number}</span>}{' '}
        {sheet.name}
      </h2>
      {sheet.beside === null ? null : <p>{sheet.beside}</p>}
    </div>
    <dl>
      {sheet.facts.map(({ term, value }) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  </header>
);

const SheetFoot = ({ footer }: { readonly footer: Sheet['footer'] }) => {
  const tell = useTell();
  return (
    <footer className="leaf-foot">
      <DrawingView drawing={footer.qr} />
      <div>
        <p>
          <strong>{footer.voidIf}</strong>
          {tell(' Scan, or type ')}
          <strong className="leaf-code-word">{footer.code}</strong>
          {tell(': current or superseded.')}
        </p>
        <p>{footer.cautions.join(' ')}</p>
      </div>
    </footer>
  );
};

const Page = ({ sheet, scale }: { readonly sheet: Sheet; readonly scale: number }) => (
  <article
    className={`leaf-page ${sheet.orientation}${sheet.frame === null ? '' : ' framed'}`}
    aria-label={`${sheet.title}, ${sheet.number ?? sheet.name}`}
    style={{ width: PAGE_WIDTH[sheet.orientation], zoom: scale }}
  >
    {sheet.frame === null ? null : <p className="leaf-frame-word">{sheet.frame}</p>}
    <div className="leaf-paper">
      <SheetHead sheet={sheet} />
      <Blocks blocks={sheet.blocks} />
      <SheetFoot footer={sheet.footer} />
    </div>
  </article>
);

export const SheetPreview = ({ sheet }: { readonly sheet: Sheet }) => {
  const tell = useTell();
  const [ref, room] = useWidth<HTMLDivElement>();
  const [isFull, setFull] = useState(false);
  const fitted = Math.min(FULL_SIZE, room / PAGE_WIDTH[sheet.orientation]);
  const isShrunk = fitted < FULL_SIZE;
  return (
    <>
      <p className="leaf-size quiet">
        {tell('One long page; the print breaks it.')}{' '}
        {isShrunk ? (
          <button type="button" aria-pressed={isFull} onClick={() => setFull(!isFull)}>
            {tell('Size of the print')}
          </button>
        ) : null}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys */}
      <section className="leaf-table-top" aria-label={tell('Preview of the sheet')} tabIndex={0}>
        <div ref={ref}>
          {room === 0 ? null : <Page sheet={sheet} scale={isFull ? FULL_SIZE : fitted} />}
        </div>
      </section>
    </>
  );
};
