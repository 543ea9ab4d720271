/** Every sheet that the show gives: those of the whole house, then the cards set by set. */

import { useEffect, useRef } from 'react';
import { inHouseWords, SELF_CHECK_ID, type SheetContext, sheetIds, sheetOf } from '#sheets';
import { message, phrase, tradeWord } from '#texts';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';

type ListProps = { readonly context: SheetContext; readonly chosen: string };

const SheetLink = ({
  id,
  chosen,
  words,
  name,
}: {
  readonly id: string;
  readonly chosen: string;
  readonly words: string;
  readonly name?: string;
}) => (
  <Link to={{ kind: 'sheets', sheet: id }} isHere={id === chosen} {...(name ? { name } : {})}>
    {words}
  </Link>
);

const CardsOfSets = ({ context, chosen }: ListProps) => {
  const tell = useTell();
  const { house, sets } = useWork();
  const ids = new Set(sheetIds(context));
  const strike = inHouseWords('strike', house);
  const card = (kind: string, words: string, id: string, name = tell('{words} card', { words })) =>
    ids.has(`${kind}/${id}`) ? (
      <SheetLink
        id={`${kind}/${id}`}
        chosen={chosen}
        words={words}
        name={tell('{name}, set {id}', { name, id })}
      />
    ) : null;
  return (
    <table className="leaf-cards">
      <caption className="only-said">{tell('Cards set by set')}</caption>
      <thead>
        <tr>
          <th scope="col">{tell('set')}</th>
          <th scope="col">{tell('hangs there')}</th>
          <th scope="col">{tell('cards and sheets')}</th>
        </tr>
      </thead>
      <tbody>
        {sets.map(({ id, set }) => (
          <tr key={id}>
            <th scope="row">{id}</th>
            <td>{set.hang?.name ?? tell('empty')}</td>
            <td>
              <div className="leaf-links">
                {card('balance-card', tell('balance'), id)}
                {card('hanging-card', tell('hanging'), id)}
                {card('calculation-report', tell('report'), id, tell('calculation report'))}
                {card('strike-sheet', strike, id, tell('{strike} sheet', { strike }))}
                {card('permit', tell('permit'), id, tell('out-of-balance permit'))}
              </div>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

/** Named without being made: to make one, orders of all its sets are searched for. */
const CALL_SHEETS: Readonly<Record<string, string>> = {
  'loading-sheet': message('Loading sheet'),
  'unloading-sheet': message('Unloading sheet'),
  briefing: message('Briefing of zones'),
};

const SheetsOfCalls = ({ context, chosen }: ListProps) => {
  const { house } = context;
  return sheetIds(context).flatMap((id) => {
    const [kind = '', of = ''] = id.split('/');
    const title = CALL_SHEETS[kind];
    if (title === undefined) return [];
    const gallery = house.galleries.find((each) => each.id === of)?.name;
    const words = `${phrase(house, title)}, ${gallery ?? inHouseWords(of, house)}`;
    return [
      <li key={id}>
        <SheetLink id={id} chosen={chosen} words={words} />
      </li>,
    ];
  });
};

const DRAWINGS: Readonly<Record<string, string>> = {
  section: message('Section'),
  plan: message('Plan'),
};

/** One of each at every moment that has a name. A cue is chosen on the drawing itself. */
const SheetsOfDrawings = ({ context, chosen }: ListProps) =>
  sheetIds(context).flatMap((id) => {
    const [kind = '', at = ''] = id.split('/');
    const title = DRAWINGS[kind];
    if (title === undefined) return [];
    const trim = `${tradeWord(context.house, 'trim')} ${at.slice('trim:'.length)}`;
    const when = at === 'record' ? phrase(context.house, 'as recorded') : trim;
    const words = `${phrase(context.house, title)}, ${when}`;
    return [
      <li key={id}>
        <SheetLink id={id} chosen={chosen} words={words} />
      </li>,
    ];
  });

/** The chosen card is in sight in its own box; the page itself does not move. */
const useChosenInSight = (chosen: string) => {
  const box = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looks again when another is chosen
  useEffect(() => {
    const row = box.current?.querySelector('[aria-current]')?.closest('tr');
    if (box.current === null || !row) return;
    const [inside, at] = [box.current.getBoundingClientRect(), row.getBoundingClientRect()];
    if (at.top >= inside.top && at.bottom <= inside.bottom) return;
    box.current.scrollTop += at.top - inside.top - inside.height / 2;
  }, [chosen]);
  return box;
};

export const SheetList = ({ context, chosen }: ListProps) => {
  const tell = useTell();
  const box = useChosenInSight(chosen);
  return (
    <nav className="leaf-choice" aria-label={tell('Sheets of this show')}>
      <ul>
        {[...sheetIds(context).filter((id) => !id.includes('/')), SELF_CHECK_ID].map((id) => (
          <li key={id}>
            <SheetLink id={id} chosen={chosen} words={sheetOf(context, id)?.title ?? id} />
          </li>
        ))}
        <SheetsOfDrawings context={context} chosen={chosen} />
        <SheetsOfCalls context={context} chosen={chosen} />
      </ul>
      <section
        ref={box}
        className="leaf-cards-box"
        aria-label={tell('Cards set by set')}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
        tabIndex={0}
      >
        <CardsOfSets context={context} chosen={chosen} />
      </section>
    </nav>
  );
};
