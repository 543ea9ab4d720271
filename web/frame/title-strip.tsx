/** The strip along the top: where one is, whether it is saved, and the workspaces in words. */

import type { Address, Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { goToAddress, useAddress } from '../address/use-address.ts';
import type { Open } from '../keeping/kept.ts';
import { redoable, undoable } from '../keeping/undo.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { LanguageChoice } from '../language/language-choice.tsx';
import { useTell } from '../language/use-tell.ts';
import { LiveAlarmsLater, LiveWordLater } from '../live/live-later.tsx';
import { SessionEntry } from '../people/session-entry.tsx';
import { type Choice, housesOf, type InView, showsOf } from '../reckoning/in-view.ts';
import { KeyCard } from './key-card.tsx';
import { LightChoice } from './light-choice.tsx';
import { SaveWord } from './save-word.tsx';

type SwitchProps = {
  readonly label: string;
  readonly chosen: string;
  readonly choices: readonly Choice[];
  readonly onChoose: (id: string) => void;
};

/** A name to read; where there are several, a list to choose among. */
const Switch = ({ label, chosen, choices, onChoose }: SwitchProps) => {
  if (choices.length < 2) return <span>{choices[0]?.name ?? chosen}</span>;
  return (
    <select aria-label={label} value={chosen} onChange={({ target }) => onChoose(target.value)}>
      {choices.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  );
};

const idOf = (document: InView['house']): string => String(document.document['id']);

/** A sheet or a set of one house may not be in another, so a switch goes to the list. */
const placeIn = (address: Address): Place =>
  'set' in address.place ? { kind: 'hangList' } : address.place;

const Names = ({ open, view }: { readonly open: Open; readonly view: InView }) => {
  const tell = useTell();
  const address = useAddress();
  const house = idOf(view.house);
  return (
    <div className="who">
      <b>
        <Switch
          label={tell('House')}
          chosen={house}
          choices={housesOf(open)}
          onChoose={(id) => goToAddress({ place: placeIn(address), house: id, show: null })}
        />
      </b>
      <div className="show-name">
        <Switch
          label={tell('Show')}
          chosen={idOf(view.show)}
          choices={showsOf(open, house)}
          onChoose={(id) => goToAddress({ ...address, house, show: id })}
        />
        {tell(', revision {revision}', { revision: view.show.server.revision })}
      </div>
    </div>
  );
};

const UndoButtons = ({ open, ids }: { readonly open: Open; readonly ids: readonly string[] }) => {
  const tell = useTell();
  const keeper = useKeeper();
  const [last, next] = [undoable(open.history, ids), redoable(open.history, ids)];
  return (
    <div className="undo">
      <button
        type="button"
        disabled={last === undefined}
        title={last === undefined ? undefined : tell('take back: {what}', { what: last.what })}
        onClick={() => keeper.undo(ids)}
      >
        {tell('Undo')}
      </button>
      <button
        type="button"
        disabled={next === undefined}
        title={next === undefined ? undefined : tell('do again: {what}', { what: next.what })}
        onClick={() => keeper.redo(ids)}
      >
        {tell('Redo')}
      </button>
    </div>
  );
};

type StripProps = {
  readonly open: Open;
  readonly view: InView;
  readonly ids: readonly string[];
  readonly setInHand: string | null;
};

export const TitleStrip = ({ open, view, ids, setInHand }: StripProps) => {
  const tell = useTell();
  const { place } = useAddress();
  const isAtDocuments = place.kind === 'bringIn' || place.kind === 'takeOut';
  const isOfSet = place.kind === 'whatIf' || place.kind === 'compare';
  const here = isAtDocuments ? 'documents' : isOfSet ? 'set' : place.kind;
  const workspaces: readonly (readonly [string, Place])[] = [
    [tell('House'), { kind: 'house', part: 'section', at: null }],
    [tell('Hang list'), { kind: 'hangList' }],
    ...(setInHand === null
      ? []
      : ([
          [tell('Set'), { kind: 'set', set: setInHand }],
          [tell('Order'), { kind: 'order', set: setInHand, job: null, from: null }],
        ] as const)),
    [tell('Live'), { kind: 'live', path: [] }],
    [tell('Sheets'), { kind: 'sheets', sheet: null }],
    [tell('Documents'), { kind: 'documents', document: null, older: null, newer: null }],
  ];
  return (
    <header className="strip">
      <Names open={open} view={view} />
      <div className="keeping">
        <div className="strip-words">
          <LiveWordLater />
          <SaveWord
            show={view.show}
            others={[view.house, view.state]}
            keptOnDevice={open.keptOnDevice}
          />
        </div>
        <UndoButtons open={open} ids={ids} />
        <KeyCard />
        <LightChoice />
        <LanguageChoice />
        <SessionEntry />
      </div>
      <nav aria-label={tell('Workspaces')}>
        {workspaces.map(([words, to]) => (
          <Link key={words} to={to} isHere={to.kind === here}>
            {words}
          </Link>
        ))}
      </nav>
      <LiveAlarmsLater />
    </header>
  );
};
