/** A new show, a copy of a show, a second house: each is a first save under an id of its own. */
import { useId, useState } from 'react';
import { blankHouse, blankShow } from '#documents';
import { DatabaseStep } from '../house-page/database-step.tsx';
import { NewHouseForm } from '../house-page/new-house-form.tsx';
import type { JsonObject } from '../keeping/json.ts';
import type { Keeper } from '../keeping/keeper.ts';
import type { Kept, Open } from '../keeping/kept.ts';
import { type NewHouse as AskedHouse, askAside } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
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

/** The id of the new document, or null where it was not saved; either way it is told. */
const added = async (
  keeper: Keeper,
  open: Open,
  tell: Tell,
  { kind, name, why, write }: Wanted,
): Promise<string | null> => {
  try {
    const id = newId(name, kind, await takenIds(open, kind));
    const document = write(id);
    const refusals = against(open, kind, document);
    if (refusals.length > 0) {
      tell({ words: `${name} was not saved`, refusals });
      return null;
    }
    const answer = await keeper.add(`${kind}:${id}`, kind, document, why);
    if (answer.outcome === 'saved') {
      tell({ words: `${name} is saved as a new ${kind}.` });
      return id;
    }
    const found = answer.outcome === 'refused' ? answer.refusals : [];
    tell({ words: `${name} was not saved: ${OUTCOMES[answer.outcome]}`, refusals: found });
  } catch (fault) {
    tell({ words: faultWords(fault), refusals: [] });
  }
  return null;
};

const OUTCOMES = {
  refused: 'the server refused it',
  stale: 'somebody else has just saved one under its id; try again',
  unreached: 'the server was not reached',
} as const;

type NewShowProps = { readonly house: Kept; readonly open: Open; readonly onTell: Tell };

export const NewShow = ({ house, open, onTell }: NewShowProps) => {
  const keeper = useKeeper();
  const [isOpen, setOpen] = useState(false);
  const isDemo = house.document['demo'] === true ? { demo: true } : {};
  return (
    <div className="new-show">
      <p className="buttons">
        <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          New show<span className="only-said"> in {nameOf(house)}</span>
        </button>
      </p>
      {isOpen ? (
        <WhyForm
          label="Name of the show"
          act="Begin the show"
          max={80}
          onLeave={() => setOpen(false)}
          onDone={(name) => {
            setOpen(false);
            void added(keeper, open, onTell, {
              kind: 'show',
              name,
              why: 'new show',
              write: (id) => ({
                ...blankShow({ id, name, house: String(house.document['id']) }),
                ...isDemo,
              }),
            });
          }}
        />
      ) : null}
    </div>
  );
};

export const CopyShow = ({ kept, open, onTell, onLeave }: ActProps) => {
  const keeper = useKeeper();
  const id = useId();
  const [house, setHouse] = useState(String(kept.document['house']));
  const houses = Object.values(open.documents).filter(({ kind }) => kind === 'house');
  const name = nameOf(kept);
  return (
    <WhyForm
      label="Name of the copy"
      act="Copy the show"
      first={`${name}, copy`.slice(0, 80)}
      max={80}
      onLeave={onLeave}
      onDone={(copy) => {
        onLeave();
        void added(keeper, open, onTell, {
          kind: 'show',
          name: copy,
          why: `copied from ${name}, revision ${kept.server.revision}`.slice(0, 200),
          write: (own) => ({ ...kept.document, id: own, name: copy, house }),
        });
      }}
    >
      <div className="why-field">
        <label htmlFor={id}>In the house</label>
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
    const id = await added(keeper, open, onTell, {
      ...house,
      write: (own) => blankHouse({ ...asked, id: own }),
    });
    setOpen(false);
    if (id === null) return;
    const state = keeper.state();
    await added(keeper, state.phase === 'open' ? state : open, onTell, {
      kind: 'show',
      name: `First show in ${name}`.slice(0, 80),
      why: 'new house',
      write: (own) => blankShow({ id: own, name: `First show in ${name}`.slice(0, 80), house: id }),
    });
  };
  return (
    <>
      <section className="house-shelf" aria-label="Another house">
        <p className="buttons">
          <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            Another house
          </button>
        </p>
        {isOpen ? (
          <NewHouseForm
            act="Begin a blank house"
            isTaking={false}
            onBegin={(asked) => void begin(asked)}
          />
        ) : null}
      </section>
      {step}
    </>
  );
};
