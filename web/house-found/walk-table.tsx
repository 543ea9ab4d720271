/** What is recorded of each set in walking order, how old it is, and what is left to look at. */
import type { House } from '#house';
import { sayMeasure } from '#sheets';
import { message, phrase } from '#texts';
import { Link } from '../address/link.tsx';
import { FOLDED } from '../frame/folded-roles.ts';
import { KnownBy } from '../hang-list/known-by.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { heightWords, stackWords } from './stand-words.ts';
import { ageOf, leftOf, type Walk, walkedSets } from './walk.ts';

export const WalkTable = ({ walk }: { readonly walk: readonly Walk[] }) => {
  const tell = useTell();
  const { house } = useWork();
  const all = walkedSets(walk);
  const left = all.filter(({ set }) => leftOf(set, house).length > 0);
  const [next] = left;
  return (
    <section aria-labelledby="walk-head">
      <h2 id="walk-head">{tell('The walk round')}</h2>
      <p className="quiet">
        {tell(
          'Only what somebody has seen is written down; what is left blank is unknown, and ' +
            'nothing is taken from the plan.',
        )}
      </p>
      <p className="walk-count" role="status">
        {all.length === 0
          ? tell('No set is entered yet.')
          : tell('{done} of {all} sets are written down.', {
              done: all.length - left.length,
              all: all.length,
            })}{' '}
        {next === undefined ? null : (
          <Link to={{ kind: 'house', part: 'found', at: null, inside: next.id }}>
            {tell('Next: set {id}', { id: next.id })}
          </Link>
        )}
      </p>
      {walk.map(({ rail, sets }) => (
        <div key={rail ?? ''} className="walk-rail">
          <h3>{rail ?? tell('No rail said')}</h3>
          <RailTable rail={rail ?? tell('no rail')} sets={sets} />
        </div>
      ))}
    </section>
  );
};

const HEADS = [
  message('set'),
  message('what hangs'),
  message('on the arbor'),
  message('batten at'),
  message('rope lock'),
  message('known by'),
  message('age'),
  message('left to look at'),
];

type RailProps = { readonly rail: string; readonly sets: readonly SetReckoning[] };

const RailTable = ({ rail, sets }: RailProps) => {
  const tell = useTell();
  const name = tell('Sets flown from {rail}', { rail });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
    <section className="wide walk-table" aria-label={name} tabIndex={0}>
      <table {...FOLDED.table} className="plain folds">
        <thead {...FOLDED.rows}>
          <tr {...FOLDED.row}>
            {HEADS.map((head) => (
              <th {...FOLDED.columnHead} key={head} scope="col">
                {tell(head)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...FOLDED.rows}>
          {sets.map((each) => (
            <SetRow key={each.id} each={each} />
          ))}
        </tbody>
      </table>
    </section>
  );
};

const RINGED = {
  closed: {
    on: message('closed, ring on'),
    off: message('closed, ring off'),
  },
  open: {
    on: message('open, ring on'),
    off: message('open, ring off'),
  },
} as const;

/** Of a lock and not of a zone, for which other languages have another word. */
const ALONE = { closed: message(' closed'), open: message(' open') } as const;

const lockWords = ({ set }: SetReckoning, house: House): string => {
  const { lock, ring } = set.recorded.state;
  if (set.lineSet.arbor === null) return phrase(house, 'none');
  if (lock === null) return phrase(house, 'unknown');
  return ring === null ? phrase(house, ALONE[lock]).trim() : phrase(house, RINGED[lock][ring]);
};

const SetRow = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const { house, nowMs } = useWork();
  const { state } = each.set.recorded;
  const age = ageOf(state.knowledge.at, house, nowMs, house);
  const left = leftOf(each.set, house);
  return (
    <tr {...FOLDED.row}>
      <th {...FOLDED.rowHead} scope="row">
        <Link
          to={{ kind: 'house', part: 'found', at: null, inside: each.id }}
          name={tell('Write down set {id}', { id: each.id })}
        >
          {each.id}
        </Link>
      </th>
      <td {...FOLDED.cell}>{each.set.hang?.name ?? tell('empty by the plan')}</td>
      <td {...FOLDED.cell}>{stackWords(state, house)}</td>
      <td {...FOLDED.cell} className="number" data-label={tell('batten at')}>
        {heightWords(state, (value) => sayMeasure({ value, kind: 'length' }, house), house)}
      </td>
      <td {...FOLDED.cell}>{lockWords(each, house)}</td>
      <td {...FOLDED.cell}>
        <KnownBy set={each.set} house={house} nowMs={nowMs} />
      </td>
      <td {...FOLDED.cell}>
        {age.words}
        {age.isStale ? <span className="caution-word"> {tell('stale')}</span> : null}
      </td>
      <td {...FOLDED.cell} data-label={tell('left to look at')}>
        {left.length === 0 ? tell('nothing') : left.join(', ')}
      </td>
    </tr>
  );
};
