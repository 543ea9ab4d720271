/** Above the list: what to look for, what to do with the cells that are chosen, what is hidden. */

import { type KeyboardEvent, memo, type RefObject, useState } from 'react';
import type { House } from '#house';
import { HANG_FAMILIES } from '#show';
import { message } from '#texts';
import type { Choosing } from '../grid/use-selection.ts';
import { useTell } from '../language/use-tell.ts';
import { type Column, HIDEABLE, headWords } from './columns.ts';
import { FINDINGS_ASKED, type FindingsAsked, USES, type Use } from './row-filter.ts';
import { familyWords } from './row-words.ts';
import { isRailOrder } from './sheet-view.ts';
import type { Acts } from './use-sheet-acts.ts';
import type { ViewOfSheet } from './use-sheet-view.ts';

const USE_WORDS: Readonly<Record<Use, string>> = {
  any: message('all sets'),
  hung: message('something hangs'),
  empty: message('empty'),
  keptEmpty: message('kept empty'),
  spare: message('spare'),
  blocked: message('locked out, dead-hung, no arbor'),
};

const FINDINGS_WORDS: Readonly<Record<FindingsAsked, string>> = {
  any: message('with and without'),
  some: message('has findings'),
  caution: message('caution or danger'),
  stop: message('danger'),
};

type ChoiceProps<T extends string> = {
  readonly label: string;
  readonly chosen: T;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly onChoose: (value: T) => void;
};

const Choice = <T extends string>({ label, chosen, options, onChoose }: ChoiceProps<T>) => (
  <label className="sheet-choice">
    <span className="label">{label}</span>
    <select
      value={chosen}
      onChange={({ target }) => {
        const option = options.find(([value]) => value === target.value);
        if (option !== undefined) onChoose(option[0]);
      }}
    >
      {options.map(([value, words]) => (
        <option key={value} value={value}>
          {words}
        </option>
      ))}
    </select>
  </label>
);

type FindProps = {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly found: (text: string) => number;
  readonly onNext: (text: string, step: 1 | -1) => void;
  readonly onBack: () => void;
  readonly looking: ViewOfSheet;
};

const Find = ({ field, found, onNext, onBack, looking }: FindProps) => {
  const tell = useTell();
  const [text, setText] = useState('');
  const isOnly = looking.view.filter.text !== '';
  const press = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') onNext(text, event.shiftKey ? -1 : 1);
    else if (event.key === 'Escape') onBack();
    else return;
    event.preventDefault();
  };
  const count = found(text);
  return (
    <div className="sheet-find">
      <label>
        <span className="label">{tell('find')}</span>
        <input
          ref={field}
          type="search"
          value={text}
          maxLength={200}
          onChange={({ target }) => {
            setText(target.value);
            if (isOnly) looking.filterBy({ text: target.value });
          }}
          onKeyDown={press}
          autoComplete="off"
          spellCheck={false}
        />
      </label>
      <label className="sheet-only">
        <input
          type="checkbox"
          checked={isOnly}
          disabled={text.trim() === ''}
          onChange={({ target }) => looking.filterBy({ text: target.checked ? text : '' })}
        />
        {tell('only these')}
      </label>
      <span className="quiet" role="status">
        {text.trim() === '' ? '' : tell('{count} found', { count })}
      </span>
    </div>
  );
};

type BarProps = FindProps & {
  readonly house: House;
  readonly acts: Acts;
  readonly choosing: Choosing;
  readonly isPasting: boolean;
  readonly onPasteBox: () => void;
};

/** Only the field that finds looks at the rows; the rest is not drawn again for an edit. */
export const SheetBar = (props: BarProps) => {
  const tell = useTell();
  const { house, looking, acts, isPasting, onPasteBox } = props;
  const { isPicking, pick } = props.choosing;
  return (
    <section className="sheet-bar" aria-label={tell('Look for and change many rows')}>
      <div className="sheet-line">
        <Find {...props} />
        <Filters house={house} looking={looking} />
      </div>
      <div className="sheet-line">
        <CellButtons {...{ acts, isPicking, pick, isPasting, onPasteBox }} />
        <HiddenColumns house={house} looking={looking} />
      </div>
    </section>
  );
};

type LookingProps = { readonly house: House; readonly looking: ViewOfSheet };

const Filters = memo(({ house, looking }: LookingProps) => {
  const tell = useTell();
  const { filter } = looking.view;
  return (
    <>
      <Choice
        label={tell('kind')}
        chosen={filter.family}
        options={[
          ['any', tell('all kinds')],
          ...HANG_FAMILIES.map((family) => [family, familyWords(family, house)] as const),
        ]}
        onChoose={(family) => looking.filterBy({ family })}
      />
      <Choice
        label={tell('sets')}
        chosen={filter.use}
        options={USES.map((use) => [use, tell(USE_WORDS[use])] as const)}
        onChoose={(use) => looking.filterBy({ use })}
      />
      <Choice
        label={tell('findings')}
        chosen={filter.findings}
        options={FINDINGS_ASKED.map((asked) => [asked, tell(FINDINGS_WORDS[asked])] as const)}
        onChoose={(findings) => looking.filterBy({ findings })}
      />
      <button type="button" disabled={isRailOrder(looking.view)} onClick={looking.toRail}>
        {tell('Every set in rail order')}
      </button>
    </>
  );
});
Filters.displayName = 'Filters';

type ButtonsProps = Pick<BarProps, 'acts' | 'isPasting' | 'onPasteBox'> &
  Pick<Choosing, 'isPicking' | 'pick'>;

const CellButtons = memo(({ acts, isPicking, pick, isPasting, onPasteBox }: ButtonsProps) => {
  const tell = useTell();
  return (
    <fieldset className="sheet-acts">
      <legend className="only-said">{tell('With the cells that are chosen')}</legend>
      <button type="button" aria-pressed={isPicking} onClick={() => pick(!isPicking)}>
        {isPicking ? tell('Choosing: tap two corners') : tell('Choose cells')}
      </button>
      <button type="button" onClick={acts.copy}>
        {tell('Copy')}
      </button>
      <button type="button" aria-expanded={isPasting} onClick={onPasteBox}>
        {tell('Paste …')}
      </button>
      <button type="button" onClick={acts.fill}>
        {tell('Fill down')}
      </button>
      <button type="button" onClick={acts.clear}>
        {tell('Clear')}
      </button>
    </fieldset>
  );
});
CellButtons.displayName = 'CellButtons';

const toggled = (hidden: ReadonlySet<Column>, column: Column): ReadonlySet<Column> => {
  const next = new Set(hidden);
  if (!next.delete(column)) next.add(column);
  return next;
};

const HiddenColumns = memo(({ house, looking: { hidden, hide } }: LookingProps) => {
  const tell = useTell();
  return (
    <details className="sheet-columns">
      <summary>
        {hidden.size === 0
          ? tell('Columns')
          : tell('Columns, {count} hidden', { count: hidden.size })}
      </summary>
      <fieldset>
        <legend className="quiet">{tell('Shown on this device')}</legend>
        <div className="sheet-column-list">
          {HIDEABLE.map((column) => (
            <label key={column}>
              <input
                type="checkbox"
                checked={!hidden.has(column)}
                onChange={() => hide(toggled(hidden, column))}
              />
              {headWords(column, house)}
            </label>
          ))}
        </div>
        <button type="button" disabled={hidden.size === 0} onClick={() => hide(new Set())}>
          {tell('Show every column')}
        </button>
      </fieldset>
    </details>
  );
});
HiddenColumns.displayName = 'HiddenColumns';
