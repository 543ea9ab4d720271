/** All notes of the house, the newest first, and a place to write one about the house itself. */
import { useTell } from '../language/use-tell.ts';
import { NoteForm } from './note-form.tsx';
import { NoteList } from './note-list.tsx';
import { useLive } from './use-live.ts';
import { useSaid } from './use-said.ts';
import './live.css';

export const NotesPage = () => {
  const tell = useTell();
  const { said, hasFailed } = useSaid(null);
  const { outbox } = useLive();
  return (
    <section className="said">
      <h1>{tell('Notes')}</h1>
      <p>
        {tell(
          'Anybody may write one. Nothing is edited or taken out. A note changes no figure and ' +
            'is no report of an accident: the house’s own way of reporting stands.',
        )}
      </p>
      <NoteForm target="house" />
      <NoteList
        said={said}
        unsent={outbox.filter(({ command }) => command.kind === 'note written')}
        hasFailed={hasFailed}
      />
    </section>
  );
};
