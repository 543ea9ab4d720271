/** The fitted show becomes a document of the other house: a first save, and then it is opened. */
import { type FormEvent, useId, useState } from 'react';
import type { Fit } from '#fitting';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { goToAddress } from '../address/use-address.ts';
import { against } from '../documents/judged.ts';
import { newId } from '../documents/shelf-of.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import type { Open } from '../keeping/kept.ts';
import { askAside } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useWork } from '../reckoning/use-work.ts';

type Props = { readonly fit: Fit; readonly to: House; readonly open: Open };

const NAME_MAX = 80;

const OUTCOMES = {
  refused: 'the server refused it',
  stale: 'somebody else has just saved one under its name; try again',
  unreached: 'the server was not reached',
} as const;

type Failed = { readonly words: string; readonly refusals: readonly Refusal[] };

/** Documents set aside keep their ids. */
const freeId = async (open: Open, name: string): Promise<string> => {
  const aside = await askAside();
  const all = [...Object.keys(open.documents), ...aside.map(({ id }) => id)];
  const taken = all.filter((id) => id.startsWith('show:')).map((id) => id.slice('show:'.length));
  return newId(name, 'show', new Set(taken));
};

export const MakeShow = ({ fit, to, open }: Props) => {
  const id = useId();
  const keeper = useKeeper();
  const { show, house } = useWork();
  const [name, setName] = useState(`${show.name}, ${to.name}`.slice(0, NAME_MAX));
  const [failed, setFailed] = useState<Failed | null>(null);
  const [isSaving, setSaving] = useState(false);
  const save = async (): Promise<void> => {
    const called = name.trim();
    const free = await freeId(open, called);
    const document = { ...fit.document, id: free, name: called };
    const refusals = against(open, 'show', document);
    if (refusals.length > 0) {
      setFailed({ words: 'the show was not saved', refusals });
      return;
    }
    const why = `fitted from ${show.name}, ${house.name}`;
    const answer = await keeper.add(`show:${free}`, 'show', document, why);
    if (answer.outcome === 'saved') {
      goToAddress({ place: { kind: 'hangList' }, house: to.id, show: free });
      return;
    }
    const found = answer.outcome === 'refused' ? answer.refusals : [];
    setFailed({ words: `not saved: ${OUTCOMES[answer.outcome]}`, refusals: found });
  };
  const make = (event: FormEvent): void => {
    event.preventDefault();
    setSaving(true);
    setFailed(null);
    save()
      .catch((fault: unknown) => setFailed({ words: String(fault), refusals: [] }))
      .finally(() => setSaving(false));
  };
  return (
    <form className="make-show" onSubmit={make}>
      <div className="piece-field">
        <label htmlFor={id}>Name of the show there</label>
        <input
          id={id}
          value={name}
          maxLength={NAME_MAX}
          required
          autoComplete="off"
          onChange={({ target }) => setName(target.value)}
        />
      </div>
      <p className="buttons">
        <button type="submit" disabled={isSaving || name.trim() === ''}>
          Make a show for {to.name}
        </button>
        <span className="quiet">A new document; this show stays as it is.</span>
      </p>
      {failed === null ? null : (
        <Notice degree="caution" title={failed.words} isNews>
          <Refusals refusals={failed.refusals} />
        </Notice>
      )}
    </form>
  );
};
