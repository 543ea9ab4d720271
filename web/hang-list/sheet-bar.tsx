/** Above the list: what to look for, what to do with the cells that are chosen, what is hidden. */
import { type KeyboardEvent, type RefObject, useState } from 'react';
import type { House } from '#house';
import { HANG_FAMILIES } from '#show';
import type { Choosing } from '../grid/use-selection.ts';
import { type Column, HIDEABLE, headWords } from './columns.ts';
import { FINDINGS_ASKED, type FindingsAsked, USES, type Use } from './row-filter.ts';
import { familyWords } from './row-words.ts';
import { isRailOrder } from './sheet-view.ts';
import type { Acts } from './use-sheet-acts.ts';
import type { ViewOfSheet } from './use-sheet-view.ts';

const USE_WORDS: Readonly<Record<Use, string>> = {
  any: 'all sets',
  hung: 'something hangs',
  empty: 'empty',
  keptEmpty: 'kept empty',
  spare: 'spare',
  blocked: 'locked out, dead-hung, no arbor',
};

const FINDINGS_WORDS: Readonly<Record<FindingsAsked, string>> = {
  any: 'with and without',
  some: 'has findings',
  caution: 'caution or danger',
  stop: 'danger',
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
        <span className="label">find</span>
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
        only these
      </label>
      <span className="quiet" role="status">
        {text.trim() === '' ? '' : `${count} found`}
      </span>
    </div>
  );
};

type BarProps = Omit<FindProps, 'found'> & {
  readonly found: (text: string) => number;
  readonly house: House;
  readonly acts: Acts;
  readonly choosing: Choosing;
  readonly isPasting: boolean;
  readonly onPasteBox: () => void;
};

export const SheetBar = (props: BarProps) => {
  const { looking } = props;
  const { filter } = looking.view;
  return (
    <section className="sheet-bar" aria-label="Look for and change many rows">
      <div className="sheet-line">
        <Find {...props} />
        <Choice
          label="kind"
          chosen={filter.family}
          options={[
            ['any', 'all kinds'],
            ...HANG_FAMILIES.map((family) => [family, familyWords(family)] as const),
          ]}
          onChoose={(family) => looking.filterBy({ family })}
        />
        <Choice
          label="sets"
          chosen={filter.use}
          options={USES.map((use) => [use, USE_WORDS[use]] as const)}
          onChoose={(use) => looking.filterBy({ use })}
        />
        <Choice
          label="findings"
          chosen={filter.findings}
          options={FINDINGS_ASKED.map((asked) => [asked, FINDINGS_WORDS[asked]] as const)}
          onChoose={(findings) => looking.filterBy({ findings })}
        />
        <button type="button" disabled={isRailOrder(looking.view)} onClick={looking.toRail}>
          Every set in rail order
        </button>
      </div>
      <div className="sheet-line">
        <CellButtons {...props} />
        <HiddenColumns house={props.house} looking={looking} />
      </div>
    </section>
  );
};

const CellButtons = ({ acts, choosing, isPasting, onPasteBox }: BarProps) => (
  <fieldset className="sheet-acts">
    <legend className="only-said">With the cells that are chosen</legend>
    <button
      type="button"
      aria-pressed={choosing.isPicking}
      onClick={() => choosing.pick(!choosing.isPicking)}
    >
      {choosing.isPicking ? 'Choosing: tap two corners' : 'Choose cells'}
    </button>
    <button type="button" onClick={acts.copy}>
      Copy
    </button>
    <button type="button" aria-expanded={isPasting} onClick={onPasteBox}>
      Paste …
    </button>
    <button type="button" onClick={acts.fill}>
      Fill down
    </button>
    <button type="button" onClick={acts.clear}>
      Clear
    </button>
  </fieldset>
);

type HiddenProps = { readonly house: House; readonly looking: ViewOfSheet };

const toggled = (hidden: ReadonlySet<Column>, column: Column): ReadonlySet<Column> => {
  const next = new Set(hidden);
  if (!next.delete(column)) next.add(column);
  return next;
};

const HiddenColumns = ({ house, looking: { hidden, hide } }: HiddenProps) => (
  <details className="sheet-columns">
    <summary>Columns{hidden.size === 0 ? '' : `, ${hidden.size} hidden`}</summary>
    <fieldset>
      <legend className="quiet">Shown on this device</legend>
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
        Show every column
      </button>
    </fieldset>
  </details>
);
