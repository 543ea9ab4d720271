/** The strip along the top: where one is, whether it is saved, and the workspaces in words. */
import type { Address, Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { goToAddress, useAddress } from '../address/use-address.ts';
import type { Open } from '../keeping/kept.ts';
import { redoable, undoable } from '../keeping/undo.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { type Choice, housesOf, type InView, showsOf } from '../reckoning/in-view.ts';
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
  address.place.kind === 'set' || address.place.kind === 'order'
    ? { kind: 'hangList' }
    : address.place;

const Names = ({ open, view }: { readonly open: Open; readonly view: InView }) => {
  const address = useAddress();
  const house = idOf(view.house);
  return (
    <div className="who">
      <b>
        <Switch
          label="House"
          chosen={house}
          choices={housesOf(open)}
          onChoose={(id) => goToAddress({ place: placeIn(address), house: id, show: null })}
        />
      </b>
      <div className="show-name">
        <Switch
          label="Show"
          chosen={idOf(view.show)}
          choices={showsOf(open, house)}
          onChoose={(id) => goToAddress({ ...address, house, show: id })}
        />
        , revision {view.show.server.revision}
      </div>
    </div>
  );
};

const UndoButtons = ({ open, ids }: { readonly open: Open; readonly ids: readonly string[] }) => {
  const keeper = useKeeper();
  const [last, next] = [undoable(open.history, ids), redoable(open.history, ids)];
  return (
    <div className="undo">
      <button
        type="button"
        disabled={last === undefined}
        title={last === undefined ? undefined : `take back: ${last.what}`}
        onClick={() => keeper.undo(ids)}
      >
        Undo
      </button>
      <button
        type="button"
        disabled={next === undefined}
        title={next === undefined ? undefined : `do again: ${next.what}`}
        onClick={() => keeper.redo(ids)}
      >
        Redo
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
  const { place } = useAddress();
  const workspaces: readonly (readonly [string, Place])[] = [
    ['House', { kind: 'house', part: 'section', at: null }],
    ['Hang list', { kind: 'hangList' }],
    ...(setInHand === null
      ? []
      : ([
          ['Set', { kind: 'set', set: setInHand }],
          ['Order', { kind: 'order', set: setInHand, job: null, from: null }],
        ] as const)),
    ['Sheets', { kind: 'sheets', sheet: null }],
  ];
  return (
    <header className="strip">
      <Names open={open} view={view} />
      <div className="keeping">
        <SaveWord kept={view.show} keptOnDevice={open.keptOnDevice} />
        <UndoButtons open={open} ids={ids} />
        <LightChoice />
      </div>
      <nav aria-label="Workspaces">
        {workspaces.map(([words, to]) => (
          <Link key={words} to={to} isHere={to.kind === place.kind}>
            {words}
          </Link>
        ))}
      </nav>
    </header>
  );
};
