/** Who decides the show bricks: the program, or a person with a reason. */
import { useState } from 'react';
import { countWords } from '#drawings';
import type { Refusal } from '#outcome';
import { told } from '#texts';
import { withBricks } from '../editing/show-edits.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { programCounts } from '../hang-list/row-words.ts';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing, useWork } from '../reckoning/use-work.ts';

type Props = { readonly each: SetReckoning };

export const BricksChoice = ({ each }: Props) => {
  const tell = useTell();
  const { hang, bare } = each.set;
  if (hang === null || !bare.known || hang.deadHungAt !== null) return null;
  return (
    <section className="bricks-choice" aria-labelledby="bricks-head">
      <h2 id="bricks-head">{tell('Show bricks')}</h2>
      <ProgramChoice each={each} />
      <PersonChoice key={JSON.stringify(hang.bricks)} each={each} />
      <p className="quiet">
        {tell(
          'A plan, not an order of work. Bricks go on and come off at their heights, counted ' +
            "aloud by two, by the house's own procedure.",
        )}
      </p>
    </section>
  );
};

const ProgramChoice = ({ each }: Props) => {
  const tell = useTell();
  const { house } = useWork();
  const editing = useEditing();
  const counts = programCounts(each.set);
  const isChosen = each.set.hang?.bricks === null;
  const { choice } = each.set;
  const words =
    counts === null
      ? choice.known
        ? tell('no mix of bricks will do')
        : tell('cannot choose yet: {needs}', { needs: told(house, choice.needs.join('; ')) })
      : countWords(
          counts.filter(({ count }) => count > 0),
          house,
        ) || tell('none');
  return (
    <p className={isChosen ? 'choice chosen' : 'choice'}>
      <span>
        {isChosen ? tell('The program chooses') : tell('The program would choose')} <b>{words}</b>
        {counts === null ? '' : tell(': least imbalance while it hangs free.')}
      </span>
      {isChosen ? null : (
        <button
          type="button"
          onClick={() =>
            editing.change({
              write: (show) => withBricks(show, each.id, null),
              what: `bricks of set ${each.id}: the program chooses`,
            })
          }
        >
          {tell('Let the program choose')}
        </button>
      )}
    </p>
  );
};

type Counts = Readonly<Record<string, string>>;

/** A text that is no count goes on as it is, so that the refusal names what was found. */
const asCount = (text: string): number => {
  const plain = text.trim() === '' ? '0' : text.trim();
  return /^\d+$/.test(plain) ? Number(plain) : (text as unknown as number);
};

const someOf = (counts: Counts): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(counts)
      .map(([kind, text]) => [kind, asCount(text)] as const)
      .filter(([, count]) => count !== 0),
  );

const PersonChoice = ({ each }: Props) => {
  const tell = useTell();
  const { house } = useWork();
  const editing = useEditing();
  const { hang, plan } = each.set;
  const fixed = hang?.bricks ?? null;
  const kinds = house.brickKinds.filter(({ serves }) => serves.show);
  const planned = plan.known ? plan.value.stack.show : [];
  const [counts, setCounts] = useState<Counts>(() =>
    Object.fromEntries(
      kinds.map(({ id }) => [id, `${planned.find(({ kind }) => kind === id)?.count ?? 0}`]),
    ),
  );
  const [reason, setReason] = useState(fixed?.reason ?? '');
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const take = (): void => {
    const typed = someOf(counts);
    setRefusals(
      editing.change({
        write: (show) => withBricks(show, each.id, { counts: typed, reason }),
        what: `bricks of set ${each.id} fixed: ${reason}`,
      }),
    );
  };
  return (
    <form
      className={fixed === null ? 'choice person' : 'choice person chosen'}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <fieldset>
        <legend>
          {fixed === null ? tell('Or a person fixes them') : tell('A person has fixed them')}
        </legend>
        {kinds.map(({ id, name }) => (
          <CountField
            key={id}
            name={name}
            count={counts[id] ?? ''}
            onType={(text) => setCounts({ ...counts, [id]: text })}
          />
        ))}
        <label className="reason">
          <span className="label">{tell('reason')}</span>
          <input value={reason} onChange={({ target }) => setReason(target.value)} />
        </label>
        <button type="submit">{fixed === null ? tell('Fix these') : tell('Change')}</button>
      </fieldset>
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('not taken, nothing changed')} isNews>
          <Refusals refusals={refusals} />
        </Notice>
      )}
    </form>
  );
};

type CountFieldProps = {
  readonly name: string;
  readonly count: string;
  readonly onType: (text: string) => void;
};

const CountField = ({ name, count, onType }: CountFieldProps) => (
  <label>
    <span className="label">{name}</span>
    <input
      className="count"
      inputMode="numeric"
      value={count}
      onChange={({ target }) => onType(target.value)}
    />
  </label>
);
