/** A drawing of the house that hands may move, with its lettering standing still at the edges. */
import { type ReactNode, useId, useRef } from 'react';
import type { Drawing, FieldPlace, FieldScale, FieldSize, FieldView } from '#drawings';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { farther, nearer, useHands, useView } from './use-field-view.ts';

export type FieldParts = {
  readonly field: Drawing;
  readonly names: Drawing | null;
  readonly heights: Drawing | null;
  readonly foot: Drawing | null;
  readonly scale: FieldScale;
};

type FieldProps = {
  readonly size: FieldSize;
  readonly whole: FieldView;
  /** A wider view that has a button of its own: the eyes in the auditorium. */
  readonly wider?: { readonly words: string; readonly view: FieldView };
  readonly draw: (view: FieldView) => FieldParts;
  readonly onTouch: (at: FieldPlace, scale: FieldScale) => void;
  readonly children?: ReactNode;
};

export const HouseField = ({ size, whole, wider, draw, onTouch, children }: FieldProps) => {
  const tell = useTell();
  const { view, isWhole, show } = useView(whole, size);
  const parts = draw(view);
  const ref = useRef<HTMLDivElement>(null);
  const hands = useHands(ref, { view, show }, parts.scale, (at) => onTouch(at, parts.scale));
  const keys = useId();
  return (
    <div className="house-field">
      <div className="field-tools">
        <button type="button" onClick={() => show(nearer(view))}>
          {tell('Nearer')}
        </button>
        <button type="button" disabled={isWhole} onClick={() => show(farther(view))}>
          {tell('Farther')}
        </button>
        <button type="button" disabled={isWhole} onClick={() => show(null)}>
          {tell('Whole stage')}
        </button>
        {wider === undefined ? null : (
          <button type="button" onClick={() => show(wider.view)}>
            {wider.words}
          </button>
        )}
        {children}
      </div>
      <div className="field-strips">
        {parts.names === null ? null : (
          <DrawingView drawing={parts.names} className="field-names" silent />
        )}
        {parts.heights === null ? null : (
          <DrawingView drawing={parts.heights} className="field-heights" silent />
        )}
        {/* biome-ignore lint/a11y/useSemanticElements: a drawing is no set of fields */}
        <div
          ref={ref}
          role="group"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: arrows move the house under it
          tabIndex={0}
          className={isWhole ? 'field whole' : 'field'}
          aria-label={tell('Drawing of the house')}
          aria-describedby={keys}
          {...hands}
        >
          <DrawingView drawing={parts.field} />
        </div>
        {parts.foot === null ? null : (
          <DrawingView drawing={parts.foot} className="field-foot" silent />
        )}
      </div>
      <p id={keys} className="quiet field-keys">
        {tell(
          'Touch a set to take it in hand. Drag to move; two fingers, or a wheel once the ' +
            'drawing is in hand, come nearer. Keys: arrows, + and −, 0 for the whole.',
        )}
      </p>
    </div>
  );
};
