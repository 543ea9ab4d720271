/** What is recorded of each set in walking order, how old it is, and what is left to look at. */
import { tradeWord } from '#drawings';
import { sayMeasure } from '#sheets';
import { Link } from '../address/link.tsx';
import { KnownBy } from '../hang-list/known-by.tsx';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { heightWords, stackWords } from './stand-words.ts';
import { ageOf, leftOf, type Walk, walkedSets } from './walk.ts';

export const WalkTable = ({ walk }: { readonly walk: readonly Walk[] }) => {
  const { house } = useWork();
  const all = walkedSets(walk);
  const left = all.filter(({ set }) => leftOf(set).length > 0);
  const [next] = left;
  return (
    <section aria-labelledby="walk-head">
      <h2 id="walk-head">The walk round</h2>
      <p className="quiet">
        Only what somebody has seen is written down; what is left blank is unknown, and nothing is
        taken from the plan.
      </p>
      <p className="walk-count" role="status">
        {all.length === 0
          ? 'No set is entered yet.'
          : `${all.length - left.length} of ${all.length} sets are written down.`}{' '}
        {next === undefined ? null : (
          <Link to={{ kind: 'house', part: 'found', at: null, inside: next.id }}>
            Next: set {next.id}
          </Link>
        )}
      </p>
      {walk.map(({ rail, sets }) => (
        <div key={rail ?? ''} className="walk-rail">
          <h3>{rail ?? `No ${tradeWord(house, 'rail')} said`}</h3>
          <RailTable rail={rail ?? 'no rail'} sets={sets} />
        </div>
      ))}
    </section>
  );
};

type RailProps = { readonly rail: string; readonly sets: readonly SetReckoning[] };

const RailTable = ({ rail, sets }: RailProps) => {
  const { house } = useWork();
  const arbor = tradeWord(house, 'arbor');
  const heads = [
    'set',
    'what hangs',
    `on the ${arbor}`,
    `${tradeWord(house, 'batten')} at`,
    'rope lock',
    'known by',
    'age',
    'left to look at',
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
    <section className="wide walk-table" aria-label={`Sets flown from ${rail}`} tabIndex={0}>
      <table className="plain">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sets.map((each) => (
            <SetRow key={each.id} each={each} />
          ))}
        </tbody>
      </table>
    </section>
  );
};

const lockWords = ({ set }: SetReckoning): string => {
  const { lock, ring } = set.recorded.state;
  if (set.lineSet.arbor === null) return 'none';
  if (lock === null) return 'unknown';
  return ring === null ? lock : `${lock}, ring ${ring}`;
};

const SetRow = ({ each }: { readonly each: SetReckoning }) => {
  const work: Work = useWork();
  const { house, nowMs } = work;
  const { state } = each.set.recorded;
  const age = ageOf(state.knowledge.at, house, nowMs);
  const left = leftOf(each.set);
  return (
    <tr>
      <th scope="row">
        <Link
          to={{ kind: 'house', part: 'found', at: null, inside: each.id }}
          name={`Write down set ${each.id}`}
        >
          {each.id}
        </Link>
      </th>
      <td>{each.set.hang?.name ?? 'empty by the plan'}</td>
      <td>{stackWords(state, house)}</td>
      <td className="number">
        {heightWords(state, (value) => sayMeasure({ value, kind: 'length' }, house))}
      </td>
      <td>{lockWords(each)}</td>
      <td>
        <KnownBy set={each.set} house={house} nowMs={nowMs} />
      </td>
      <td>
        {age.words}
        {age.isStale ? <span className="caution-word"> stale</span> : null}
      </td>
      <td>{left.length === 0 ? 'nothing' : left.join(', ')}</td>
    </tr>
  );
};
