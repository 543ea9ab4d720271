/** Which set, what hangs there, what hangs beside it, and how it stands by the record. */
import { type FormEvent, useState } from 'react';
import type { Refusal } from '#outcome';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { withField, withHang } from '../editing/show-edits.ts';
import { Refusals } from '../frame/refusals.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing, useWork } from '../reckoning/use-work.ts';
import { StandsNow } from './stands-now.tsx';

/** Typed, and Enter: another set. */
const NumberBox = ({ id }: { readonly id: string }) => {
  const tell = useTell();
  const { sets } = useWork();
  const [typed, setTyped] = useState(id);
  const isKnown = sets.some((each) => each.id.toLowerCase() === typed.trim().toLowerCase());
  const leave = (event: FormEvent): void => {
    event.preventDefault();
    const found = sets.find((each) => each.id.toLowerCase() === typed.trim().toLowerCase());
    if (found !== undefined) go({ kind: 'set', set: found.id });
  };
  return (
    <form className="number-box" onSubmit={leave}>
      <label className="only-said" htmlFor="set-number">
        {tell('Set number: type another and press Enter')}
      </label>
      <input
        id="set-number"
        value={typed}
        size={Math.max(2, typed.length)}
        autoComplete="off"
        aria-invalid={!isKnown}
        onFocus={({ target }) => target.select()}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={() => setTyped(id)}
      />
      {isKnown ? null : <span className="number-note">{tell('no such set')}</span>}
    </form>
  );
};

const NameBox = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const editing = useEditing();
  const { sets } = useWork();
  const { hang } = each.set;
  const name = hang?.name ?? '';
  const [typed, setTyped] = useState<string | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const take = (): void => {
    if (typed === null || typed === name || (hang === null && typed.trim() === '')) {
      setTyped(null);
      return;
    }
    const railOrder = sets.map(({ id }) => id);
    const found = editing.change({
      write: (show) =>
        hang === null
          ? withHang(show, { set: each.id, name: typed, family: 'other', railOrder })
          : withField(show, each.id, ['name'], typed),
      what: `name of set ${each.id}: ${typed}`,
    });
    setRefusals(found);
    if (found.length === 0) setTyped(null);
  };
  const empty =
    each.keptEmpty === null ? tell('Empty') : tell('Empty, {why}', { why: each.keptEmpty });
  return (
    <div className="name-box">
      <input
        aria-label={tell('What hangs on set {id}', { id: each.id })}
        value={typed ?? name}
        placeholder={empty}
        autoComplete="off"
        onChange={({ target }) => setTyped(target.value)}
        onKeyDown={({ key, currentTarget }) => {
          if (key === 'Enter') currentTarget.blur();
          if (key === 'Escape') {
            setTyped(null);
            setRefusals([]);
          }
        }}
        onBlur={take}
      />
      {refusals.length === 0 ? null : <Refusals refusals={refusals} />}
    </div>
  );
};

type Tell = ReturnType<typeof useTell>;

const nameOf = (each: SetReckoning, tell: Tell): string => each.set.hang?.name ?? tell('empty');

const Beside = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const { sets } = useWork();
  const here = sets.findIndex(({ id }) => id === each.id);
  const [before, after] = [sets[here - 1], sets[here + 1]];
  return (
    <p className="beside">
      {tell('beside it')}{' '}
      {[before, after]
        .filter((one) => one !== undefined)
        .map((one, index) => (
          <span key={one.id}>
            {index === 0 ? '' : tell(' and ')}
            <Link to={{ kind: 'set', set: one.id }}>
              {one.id} {nameOf(one, tell)}
            </Link>
          </span>
        ))}
    </p>
  );
};

export const SetHead = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  return (
    <div className="set-head">
      <div className="set-title">
        <h1 className="only-said">
          {tell('Set {id}, {name}', { id: each.id, name: nameOf(each, tell) })}
        </h1>
        <div className="set-name">
          <NumberBox id={each.id} />
          <NameBox each={each} />
        </div>
        <Beside each={each} />
        {each.set.hang === null ? null : (
          <nav aria-label={tell('Questions about this set')} className="set-questions">
            <Link to={{ kind: 'whatIf', set: each.id, change: null }}>{tell('What if?')}</Link>
            <Link
              to={{
                kind: 'compare',
                set: each.id,
                other: null,
                show: null,
                house: null,
                revision: null,
              }}
            >
              {tell('Lay another hang beside it')}
            </Link>
            <Link to={{ kind: 'whichSet', piece: each.id }}>
              {tell('Which other set would take it?')}
            </Link>
          </nav>
        )}
      </div>
      <StandsNow each={each} />
    </div>
  );
};
