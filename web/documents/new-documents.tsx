/** A new show, a copy of a show, a second house: each is a first save under an id of its own. */
import { useId, useState } from 'react';
import { blankHouse, blankShow } from '#documents';
import { message, phrase, type Voice } from '#texts';
import { DatabaseStep } from '../house-page/database-step.tsx';
import { NewHouseForm } from '../house-page/new-house-form.tsx';
import type { JsonObject } from '../keeping/json.ts';
import type { Keeper } from '../keeping/keeper.ts';
import type { Kept, Open } from '../keeping/kept.ts';
import { type NewHouse as AskedHouse, askAside } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { against } from './judged.ts';
import { nameOf, newId } from './shelf-of.ts';
import { type ActProps, faultWords, type Tell } from './tell.ts';
import { WhyForm } from './why-form.tsx';

type Kind = 'house' | 'show';

/** Ids in use and set aside: a document that is set aside keeps its own. */
const takenIds = async (open: Open, kind: Kind): Promise<ReadonlySet<string>> => {
  const aside = await askAside();
  const all = [...Object.keys(open.documents), ...aside.map(({ id }) => id)];
  return new Set(
    all.flatMap((id) => (id.startsWith(`${kind}:`) ? [id.slice(kind.length + 1)] : [])),
  );
};

type Wanted = {
  readonly kind: Kind;
  readonly name: string;
  readonly why: string;
  readonly write: (id: string) => JsonObject;
};

type Adding = {
  readonly keeper: Keeper;
  readonly open: Open;
  readonly voice: Voice;
  readonly onTell: Tell;
};

const ADDED = {
  house: message('{name} is saved as a new house.'),
  show: message('{name} is saved as a new show.'),
} as const;

/** The id of the new document, or null where it was not saved; either way it is told. */
const added = async (
  { keeper, open, voice, onTell }: Adding,
  { kind, name, why, write }: Wanted,
): Promise<string | null> => {
  try {
    const id = newId(name, kind, await takenIds(open, kind));
    const document = write(id);
    const refusals = against(open, kind, document);
    if (refusals.length > 0) {
      onTell({ words: phrase(voice, '{name} was not saved', { name }), refusals });
      return null;
    }
    const answer = await keeper.add(`${kind}:${id}`, kind, document, why);
    if (answer.outcome === 'saved') {
      onTell({ words: phrase(voice, ADDED[kind], { name }) });
      return id;
    }
    const found = answer.outcome === 'refused' ? answer.refusals : [];
    onTell({ words: phrase(voice, OUTCOMES[answer.outcome], { name }), refusals: found });
  } catch (fault) {
    onTell({ words: faultWords(voice, fault), refusals: [] });
  }
  return null;
};

const OUTCOMES = {
  refused: message('{name} was not saved: the server refused it'),
  stale: message('{name} was not saved: somebody else has just saved one under its id; try again'),
  unreached: message('{name} was not saved: the server was not reached'),
} as const;

type NewShowProps = { readonly house: Kept; readonly open: Open; readonly onTell: Tell };

export const NewShow = ({ house, open, onTell }: NewShowProps) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  const [isOpen, setOpen] = useState(false);
  const isDemo = house.document['demo'] === true ? { demo: true } : {};
  return (
    <div className="new-show">
      <p className="buttons">
        <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {tell('New show')}
          <span className="only-said">{tell(' in {name}', { name: nameOf(house) })}</span>
        </button>
      </p>
      {isOpen ? (
        <WhyForm
          label={tell('Name of the show')}
          act={tell('Begin the show')}
          max={80}
          onLeave={() => setOpen(false)}
          onDone={(name) => {
            setOpen(false);
            void added(
              { keeper, open, voice, onTell },
              {
                kind: 'show',
                name,
                why: 'new show',
                write: (id) => ({
                  ...blankShow({ id, name, house: String(house.document['id']) }),
                  ...isDemo,
                }),
              },
            );
          }}
        />
      ) : null}
    </div>
  );
};

export const CopyShow = ({ kept, open, onTell, onLeave }: ActProps) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  const id = useId();
  const [house, setHouse] = useState(String(kept.document['house']));
  const houses = Object.values(open.documents).filter(({ kind }) => kind === 'house');
  const name = nameOf(kept);
  return (
    <WhyForm
      label={tell('Name of the copy')}
      act={tell('Copy the show')}
      first={tell('{name}, copy', { name }).slice(0, 80)}
      max={80}
      onLeave={onLeave}
      onDone={(copy) => {
        onLeave();
        void added(
          { keeper, open, voice, onTell },
          {
            kind: 'show',
            name: copy,
            why: `copied from ${name}, revision ${kept.server.revision}`.slice(0, 200),
            write: (own) => ({ ...kept.document, id: own, name: copy, house }),
          },
        );
      }}
    >
      <div className="why-field">
        <label htmlFor={id}>{tell('In the house')}</label>
        <select id={id} value={house} onChange={({ target }) => setHouse(target.value)}>
          {houses.map((each) => (
            <option key={each.id} value={String(each.document['id'])}>
              {nameOf(each)}
            </option>
          ))}
        </select>
      </div>
    </WhyForm>
  );
};

/** In the demo the step to a database of one's own stands here: the two are never mixed. */
export const NewHouse = ({ open, onTell }: { readonly open: Open; readonly onTell: Tell }) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  const [isOpen, setOpen] = useState(false);
  const step = (
    <div className="house-shelf">
      <DatabaseStep databases={open.databases} />
    </div>
  );
  if (open.databases.inHand === 'demo') return step;
  const begin = async (asked: AskedHouse): Promise<void> => {
    const { name } = asked;
    const house = { kind: 'house', name, why: 'new house' } as const;
    const id = await added(
      { keeper, open, voice, onTell },
      {
        ...house,
        write: (own) => blankHouse({ ...asked, id: own }),
      },
    );
    setOpen(false);
    if (id === null) return;
    const state = keeper.state();
    const first = tell('First show in {name}', { name }).slice(0, 80);
    const now = state.phase === 'open' ? state : open;
    await added(
      { keeper, open: now, voice, onTell },
      {
        kind: 'show',
        name: first,
        why: 'new house',
        write: (own) => blankShow({ id: own, name: first, house: id }),
      },
    );
  };
  return (
    <>
      <section className="house-shelf" aria-label={tell('Another house')}>
        <p className="buttons">
          <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {tell('Another house')}
          </button>
        </p>
        {isOpen ? (
          <NewHouseForm
            act={tell('Begin a blank house')}
            isTaking={false}
            onBegin={(asked) => void begin(asked)}
          />
        ) : null}
      </section>
      {step}
    </>
  );
};
