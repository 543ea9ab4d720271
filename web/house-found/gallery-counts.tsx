/** Loose bricks on each loading gallery, counted; and those that are kept for somebody. */
import { useState } from 'react';
import type { Gallery } from '#house';
import type { Refusal } from '#outcome';
import { sayMoment } from '#sheets';
import { withStock } from '../editing/state-edits.ts';
import { DeskContext } from '../house-entry/desk.ts';
import { ListEntries } from '../house-entry/list-entries.tsx';
import { numberOr } from '../house-entry/sourced-text.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { NotWritten } from './not-written.tsx';
import { recordList, useRecordDesk } from './record-desk.ts';
import { useRecord, useWho } from './use-record.ts';

export const GalleryCounts = () => {
  const tell = useTell();
  const { house } = useWork();
  if (house.galleries.length === 0 || house.brickKinds.length === 0) return null;
  return (
    <section aria-labelledby="gallery-counts">
      <h2 id="gallery-counts">{tell('Loose bricks on the galleries')}</h2>
      {house.galleries.map((gallery) => (
        <OneGallery key={gallery.id} gallery={gallery} />
      ))}
    </section>
  );
};

type Counts = Readonly<Record<string, string>>;

/** What is typed of the counts of one gallery, and writing it down. */
const useCounting = ({ id, name }: Gallery) => {
  const record = useRecord();
  const who = useWho();
  const [typed, setTyped] = useState<Counts>({});
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const isReady = who.by.trim() !== '' && Object.keys(typed).length > 0;
  const write = async (): Promise<void> => {
    if (!isReady) return;
    const looked = { at: record.now(), by: who.by.trim() };
    const counts = Object.fromEntries(
      Object.entries(typed).map(([kind, text]) => [
        kind,
        text.trim() === '' ? undefined : numberOr(text),
      ]),
    );
    const refused = await record.change(
      {
        write: (document) => withStock(document, id, counts, looked),
        what: `loose bricks counted: ${name}`,
      },
      looked,
    );
    setRefusals(refused);
    if (refused.length === 0) setTyped({});
  };
  return { who, typed, setTyped, refusals, isReady, write };
};

const OneGallery = ({ gallery }: { readonly gallery: Gallery }) => {
  const tell = useTell();
  const { house, state } = useWork();
  const { who, typed, setTyped, refusals, isReady, write } = useCounting(gallery);
  const recorded = state?.galleries[gallery.id];
  const stock = recorded?.stock ?? {};
  return (
    <form
      className="found-form"
      aria-label={tell('Loose bricks: {gallery}', { gallery: gallery.name })}
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <h3>{gallery.name}</h3>
      <p className="quiet">
        {recorded?.countedAt == null
          ? tell('Not counted.')
          : tell('Counted {moment}, {by}.', {
              moment: sayMoment(recorded.countedAt, house),
              by: recorded.countedBy ?? tell('nobody named'),
            })}
      </p>
      <div className="found-fields">
        {house.brickKinds.map(({ id, name }) => (
          <TextField
            key={id}
            label={tell('{name}, loose', { name })}
            value={typed[id] ?? String(stock[id] ?? '')}
            hint={tell('not counted')}
            onType={(text) => setTyped({ ...typed, [id]: text })}
          />
        ))}
        <TextField
          label={tell('Counted by')}
          value={who.by}
          hint={tell('name or post')}
          onType={who.type}
        />
      </div>
      <NotWritten refusals={refusals} />
      <p className="buttons">
        <button type="submit" disabled={!isReady}>
          {tell('Write the count down')}
        </button>
      </p>
      <Reserved gallery={gallery.id} by={who.by.trim()} />
    </form>
  );
};

const Reserved = ({ gallery, by }: { readonly gallery: string; readonly by: string }) => {
  const tell = useTell();
  const desk = useRecordDesk(useRecord(), by);
  const { state } = useWork();
  if (desk === null || by === '' || state?.galleries[gallery] === undefined) return null;
  return (
    <DeskContext value={desk}>
      <details className="found-more">
        <summary>
          {tell('Kept for somebody: {count}', {
            count: state.galleries[gallery]?.reserved.length ?? 0,
          })}
        </summary>
        <ListEntries
          form={recordList('galleries', 'reserved')}
          path={['galleries', gallery, 'reserved']}
          place="reserved"
          about={tell('Nobody else may take these.')}
        />
      </details>
    </DeskContext>
  );
};
