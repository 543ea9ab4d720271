/** Free sets, best first, each with its figures and every reason in words. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import type { Candidate, CandidateWork, Ranked } from '#placing';
import { inHouseWords } from '#sheets';
import { Link } from '../address/link.tsx';
import {
  type Names,
  sayAgainst,
  sayBay,
  sayBricks,
  sayGap,
  sayLook,
  sayNotKnown,
  sayOff,
  sayWork,
  sayWorst,
} from './place-words.ts';

type RowProps = {
  readonly candidate: Candidate;
  readonly house: House;
  readonly names: Names;
  readonly place: string;
  readonly standing: keyof typeof WORDS;
  readonly looks: Candidate['lookAt'];
  readonly work: CandidateWork | null;
  readonly isAsking: boolean;
  readonly onAsk: (() => void) | null;
  /** Null where it hangs now. */
  readonly onHang: (() => void) | null;
};

const WORDS = {
  possible: 'nothing against it',
  unknown: 'nothing known against it',
  now: 'where it hangs now',
} as const;

const counted = (count: number, word: string): string | null =>
  count === 0 ? null : `${count} ${word}`;

type GroupProps = { readonly title: string; readonly sentences: readonly string[] };

const Group = ({ title, sentences }: GroupProps) =>
  sentences.length === 0 ? null : (
    <>
      <dt>{title}</dt>
      <dd>
        <ul>
          {[...new Set(sentences)].map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </dd>
    </>
  );

const Reasons = ({ candidate, looks, house, names, standing }: RowProps) => {
  const { against, notKnown } = candidate;
  const parts = [
    counted(against.length, 'against'),
    counted(notKnown.length, 'not known'),
    counted(looks.length, 'to look at'),
  ].filter((part) => part !== null);
  return (
    <>
      {WORDS[standing]}
      {parts.length === 0 ? null : (
        <details>
          <summary>
            {parts.join(', ')}
            <span className="only-said"> on set {candidate.set}</span>
          </summary>
          <dl>
            <Group
              title="Against"
              sentences={against.map((each) => sayAgainst(each, house, names))}
            />
            <Group title="Not known" sentences={notKnown.map((each) => sayNotKnown(each, house))} />
            <Group
              title="To look at"
              sentences={looks.map((each) => sayLook(each, house, names))}
            />
          </dl>
        </details>
      )}
    </>
  );
};

const WorkCell = ({ candidate, work, house, isAsking, onAsk }: RowProps) => {
  if (work !== null) {
    return (
      <>
        on: {sayWork(work.load, house)}
        <br />
        off: {sayWork(work.strike, house)}
      </>
    );
  }
  if (isAsking) return <span className="quiet">searching …</span>;
  return onAsk === null ? (
    <span className="quiet">not asked</span>
  ) : (
    <button type="button" onClick={onAsk}>
      Ask<span className="only-said"> what the work on set {candidate.set} needs</span>
    </button>
  );
};

const Row = (props: RowProps) => {
  const { candidate, house, place, onHang } = props;
  const { set, offM, space, bricks, bay } = candidate;
  const reach = bricks?.known ? bricks.value.reachedFrom : null;
  return (
    <tr>
      <td className="number" data-label={place === '' ? undefined : 'rank'}>
        {place}
      </td>
      <th scope="row">
        <Link to={{ kind: 'set', set }}>{set}</Link>
      </th>
      <td data-label="from the wanted place">{sayOff(offM, house)}</td>
      <td data-label="room in depth">
        <span className="quiet">down</span> {sayGap(space.downstage, house)}
        <br />
        <span className="quiet">up</span> {sayGap(space.upstage, house)}
      </td>
      <td data-label={inHouseWords('bricks', house)}>
        {sayBricks(bricks, house)}
        {reach?.known ? (
          <small className="quiet">
            {reach.value === null ? 'top reached from no gallery' : `reached from ${reach.value}`}
          </small>
        ) : null}
      </td>
      <td data-label="most at a trim">{sayWorst(bricks, house)}</td>
      <td data-label="bay with it">{sayBay(bay)}</td>
      <td data-label="work on it needs">
        <WorkCell {...props} />
      </td>
      <td className="place-reasons whole" data-label="standing, and why">
        <Reasons {...props} />
        {onHang === null ? null : (
          <button type="button" onClick={onHang}>
            Hang it here<span className="only-said">, on set {set}</span>
          </button>
        )}
      </td>
    </tr>
  );
};

type TableProps = {
  readonly ranked: readonly Ranked[];
  readonly now: Candidate | null;
  readonly house: House;
  readonly names: Names;
  readonly asking: readonly string[];
  readonly onAsk: (sets: readonly string[]) => void;
  readonly onHang: (set: string) => void;
};

export const PlacesTable = ({ ranked, now, house, names, asking, onAsk, onHang }: TableProps) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
  <section className="wide" aria-label="Free sets, best first, table" tabIndex={0}>
    <table className="plain places-table folds-early">
      <thead>
        <tr>
          <th scope="col">
            <span className="only-said">rank</span>
          </th>
          <th scope="col">set</th>
          <th scope="col">from the wanted place</th>
          <th scope="col">room in depth</th>
          <th scope="col">{inHouseWords('bricks', house)}</th>
          <th scope="col">most at a trim</th>
          <th scope="col">bay with it</th>
          <th scope="col">work on it needs</th>
          <th scope="col">standing, and why</th>
        </tr>
      </thead>
      <tbody>
        {now === null ? null : (
          <Row
            candidate={now}
            house={house}
            names={names}
            place=""
            standing="now"
            looks={now.lookAt.filter(({ is }) => is !== 'stillOn')}
            work={null}
            isAsking={false}
            onAsk={null}
            onHang={null}
          />
        )}
        {ranked.map(({ candidate, standing, work }, index) => (
          <Row
            key={candidate.set}
            candidate={candidate}
            house={house}
            names={names}
            place={`${index + 1}`}
            standing={standing === 'possible' ? 'possible' : 'unknown'}
            looks={candidate.lookAt}
            work={work}
            isAsking={asking.includes(candidate.set)}
            onAsk={standing === 'cannot' || asking.length > 0 ? null : () => onAsk([candidate.set])}
            onHang={() => onHang(candidate.set)}
          />
        ))}
      </tbody>
      <caption className="only-said">
        Free sets for the piece, best first; {tradeWord(house, 'arbor')} masses with the piece hung
      </caption>
    </table>
  </section>
);

type RuledOutProps = Pick<TableProps, 'ranked' | 'house' | 'names'>;

const workAgainst = ({ work }: Ranked, house: House): readonly string[] =>
  work === null
    ? []
    : [
        ...(work.load.is === 'noOrder' ? [`To hang it ${sayWork(work.load, house)}.`] : []),
        ...(work.strike.is === 'noOrder' ? [`To strike it ${sayWork(work.strike, house)}.`] : []),
      ];

/** A planner may change what is in the way, so each keeps all its reasons. */
export const RuledOut = ({ ranked, house, names }: RuledOutProps) => (
  <table className="plain ruled-out">
    <thead>
      <tr>
        <th scope="col">set</th>
        <th scope="col">from the wanted place</th>
        <th scope="col">what is in the way</th>
      </tr>
    </thead>
    <tbody>
      {ranked.map((each) => {
        const { set, offM, against } = each.candidate;
        const said = [
          ...against.map((one) => sayAgainst(one, house, names)),
          ...workAgainst(each, house),
        ];
        return (
          <tr key={set}>
            <th scope="row">
              <Link to={{ kind: 'set', set }}>{set}</Link>
            </th>
            <td>{sayOff(offM, house)}</td>
            <td>
              {said.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </td>
          </tr>
        );
      })}
    </tbody>
  </table>
);
