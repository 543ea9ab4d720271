/** The fitted show becomes a document of the other house: a first save, and then it is opened. */
import { type FormEvent, useId, useState } from 'react';
import type { Fit } from '#fitting';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { message } from '#texts';
import { goToAddress } from '../address/use-address.ts';
import { against } from '../documents/judged.ts';
import { newId } from '../documents/shelf-of.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import type { Open } from '../keeping/kept.ts';
import { askAside } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';

type Props = { readonly fit: Fit; readonly to: House; readonly open: Open };

const NAME_MAX = 80;

const OUTCOMES = {
  refused: message('not saved: the server refused it'),
  stale: message('not saved: somebody else has just saved one under its name; try again'),
  unreached: message('not saved: the server was not reached'),
} as const;

type Failed = { readonly words: string; readonly refusals: readonly Refusal[] };

/** Documents set aside keep their ids. */
const freeId = async (open: Open, name: string): Promise<string> => {
  const aside = await askAside();
  const all = [...Object.keys(open.documents), ...aside.map(({ id }) => id)];
  const taken = all.filter((id) => id.startsWith('show:')).map((id) => id.slice('show:'.length));
  return newId(name, 'show', new Set(taken));
};

/** Saves it under a free id and opens it; what stood against it, or null. */
const useMaking = ({ fit, to, open }: Props) => {
  const tell = useTell();
  const keeper = useKeeper();
  const { show, house } = useWork();
  return async (name: string): Promise<Failed | null> => {
    const called = name.trim();
    const free = await freeId(open, called);
    const document = { ...fit.document, id: free, name: called };
    const refusals = against(open, 'show', document);
    if (refusals.length > 0) return { words: tell('the show was not saved'), refusals };
    const why = `fitted from ${show.name}, ${house.name}`;
    const answer = await keeper.add(`show:${free}`, 'show', document, why);
    if (answer.outcome === 'saved') {
      goToAddress({ place: { kind: 'hangList' }, house: to.id, show: free });
      return null;
    }
    const found = answer.outcome === 'refused' ? answer.refusals : [];
    return { words: tell(OUTCOMES[answer.outcome]), refusals: found };
  };
};

export const MakeShow = (props: Props) => {
  const { to } = props;
  const tell = useTell();
  const id = useId();
  const save = useMaking(props);
  const { show } = useWork();
  const [name, setName] = useState(`${show.name}, ${to.name}`.slice(0, NAME_MAX));
  const [failed, setFailed] = useState<Failed | null>(null);
  const [isSaving, setSaving] = useState(false);
  const make = (event: FormEvent): void => {
    event.preventDefault();
    setSaving(true);
    setFailed(null);
    save(name)
      .then(setFailed, (fault: unknown) => setFailed({ words: String(fault), refusals: [] }))
      .finally(() => setSaving(false));
  };
  return (
    <form className="make-show" onSubmit={make}>
      <div className="piece-field">
        <label htmlFor={id}>{tell('Name of the show there')}</label>
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
          {tell('Make a show for {house}', { house: to.name })}
        </button>
        <span className="quiet">{tell('A new document; this show stays as it is.')}</span>
      </p>
      {failed === null ? null : (
        <Notice degree="caution" title={failed.words} isNews>
          <Refusals refusals={failed.refusals} />
        </Notice>
      )}
    </form>
  );
};
