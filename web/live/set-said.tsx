/** On the screen of a set: what people wrote about it, and who signed its card. */
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { NoteForm } from './note-form.tsx';
import { NoteList } from './note-list.tsx';
import { SignPart } from './sign-part.tsx';
import { useLive } from './use-live.ts';
import { useSaid } from './use-said.ts';
import './live.css';

export const SetSaid = ({ id, isHung }: { readonly id: string; readonly isHung: boolean }) => {
  const tell = useTell();
  const { kept } = useWork();
  // A database may hold several houses, each with a set of this number.
  const target = `set:${String(kept.house.document['id'])}/${id}`;
  const { said, hasFailed } = useSaid(target);
  const { outbox } = useLive();
  const unsent = outbox.filter(({ command }) => command.target === target);
  return (
    <section className="set-part said" aria-labelledby="said-head">
      <h2 id="said-head">{tell('Notes and sign-off')}</h2>
      <NoteForm target={target} />
      <NoteList said={said} unsent={unsent} hasFailed={hasFailed} />
      <p>
        <Link to={{ kind: 'notes' }}>{tell('All notes of the house')}</Link>
      </p>
      {isHung ? <SignPart key={target} set={id} target={target} said={said} /> : null}
    </section>
  );
};
