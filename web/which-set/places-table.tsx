/** Free sets, best first, each with its figures and every reason in words. */
import type { House } from '#house';
import type { Candidate, CandidateWork, Ranked } from '#placing';
import { message, phrase } from '#texts';
import { Link } from '../address/link.tsx';
import { FOLDED } from '../frame/folded-roles.ts';
import { useTell } from '../language/use-tell.ts';
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
  possible: message('nothing against it'),
  unknown: message('nothing known against it'),
  now: message('where it hangs now'),
} as const;

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
  const tell = useTell();
  const { against, notKnown } = candidate;
  const [opposed, open, seen] = [against.length, notKnown.length, looks.length];
  const parts = [
    ...(opposed === 0 ? [] : [tell('{count} against', { count: opposed })]),
    ...(open === 0 ? [] : [tell('{count} not known', { count: open })]),
    ...(seen === 0 ? [] : [tell('{count} to look at', { count: seen })]),
  ];
  return (
    <>
      {tell(WORDS[standing])}
      {parts.length === 0 ? null : (
        <details>
          <summary>
            {parts.join(', ')}
            <span className="only-said">{tell(' on set {set}', { set: candidate.set })}</span>
          </summary>
          <dl>
            <Group
              title={tell('Against')}
              sentences={against.map((each) => sayAgainst(each, house, names))}
            />
            <Group
              title={tell('Not known')}
              sentences={notKnown.map((each) => sayNotKnown(each, house))}
            />
            <Group
              title={tell('To look at')}
              sentences={looks.map((each) => sayLook(each, house, names))}
            />
          </dl>
        </details>
      )}
    </>
  );
};

const WorkCell = ({ candidate, work, house, isAsking, onAsk }: RowProps) => {
  const tell = useTell();
  if (work !== null) {
    return (
      <>
        {tell('on: {work}', { work: sayWork(work.load, house) })}
        <br />
        {tell('off: {work}', { work: sayWork(work.strike, house) })}
      </>
    );
  }
  if (isAsking) return <span className="quiet">{tell('searching …')}</span>;
  return onAsk === null ? (
    <span className="quiet">{tell('not asked')}</span>
  ) : (
    <button type="button" onClick={onAsk}>
      {tell('Ask')}
      <span className="only-said">
        {tell(' what the work on set {set} needs', { set: candidate.set })}
      </span>
    </button>
  );
};

const Row = (props: RowProps) => {
  const tell = useTell();
  const { candidate, house, place, onHang } = props;
  const { set, offM, space, bricks, bay } = candidate;
  const reach = bricks?.known ? bricks.value.reachedFrom : null;
  return (
    <tr {...FOLDED.row}>
      <td {...FOLDED.cell} className="number" data-label={place === '' ? undefined : tell('rank')}>
        {place}
      </td>
      <th {...FOLDED.rowHead} scope="row">
        <Link to={{ kind: 'set', set }}>{set}</Link>
      </th>
      <td {...FOLDED.cell} data-label={tell('from the wanted place')}>
        {sayOff(offM, house)}
      </td>
      <td {...FOLDED.cell} data-label={tell('room in depth')}>
        <span className="quiet">{tell('down ')}</span>
        {sayGap(space.downstage, house)}
        <br />
        <span className="quiet">{tell('up ')}</span>
        {sayGap(space.upstage, house)}
      </td>
      <td {...FOLDED.cell} data-label={tell('bricks')}>
        {sayBricks(bricks, house)}
        {reach?.known ? (
          <small className="quiet">
            {reach.value === null
              ? tell('top reached from no gallery')
              : tell('reached from {gallery}', { gallery: reach.value })}
          </small>
        ) : null}
      </td>
      <td {...FOLDED.cell} data-label={tell('most at a trim')}>
        {sayWorst(bricks, house)}
      </td>
      <td {...FOLDED.cell} data-label={tell('bay with it')}>
        {sayBay(bay, house)}
      </td>
      <td {...FOLDED.cell} data-label={tell('work on it needs')}>
        <WorkCell {...props} />
      </td>
      <td {...FOLDED.cell} className="place-reasons whole" data-label={tell('standing, and why')}>
        <Reasons {...props} />
        {onHang === null ? null : (
          <button type="button" onClick={onHang}>
            {tell('Hang it here')}
            <span className="only-said">{tell(', on set {set}', { set })}</span>
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

const HEADS = [
  message('set'),
  message('from the wanted place'),
  message('room in depth'),
  message('bricks'),
  message('most at a trim'),
  message('bay with it'),
  message('work on it needs'),
  message('standing, and why'),
] as const;

export const PlacesTable = (props: TableProps) => {
  const { ranked, now, house, names, asking, onAsk, onHang } = props;
  const tell = useTell();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
    <section className="wide" aria-label={tell('Free sets, best first, table')} tabIndex={0}>
      <table {...FOLDED.table} className="plain places-table folds-early">
        <thead {...FOLDED.rows}>
          <tr {...FOLDED.row}>
            <th {...FOLDED.columnHead} scope="col">
              <span className="only-said">{tell('rank')}</span>
            </th>
            {HEADS.map((head) => (
              <th key={head} {...FOLDED.columnHead} scope="col">
                {tell(head)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...FOLDED.rows}>
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
              onAsk={
                standing === 'cannot' || asking.length > 0 ? null : () => onAsk([candidate.set])
              }
              onHang={() => onHang(candidate.set)}
            />
          ))}
        </tbody>
        <caption className="only-said">
          {tell('Free sets for the piece, best first; arbor masses with the piece hung')}
        </caption>
      </table>
    </section>
  );
};

type RuledOutProps = Pick<TableProps, 'ranked' | 'house' | 'names'>;

const workAgainst = ({ work }: Ranked, house: House): readonly string[] =>
  work === null
    ? []
    : [
        ...(work.load.is === 'noOrder'
          ? [phrase(house, 'To hang it {work}.', { work: sayWork(work.load, house) })]
          : []),
        ...(work.strike.is === 'noOrder'
          ? [phrase(house, 'To strike it {work}.', { work: sayWork(work.strike, house) })]
          : []),
      ];

/** A planner may change what is in the way, so each keeps all its reasons. */
export const RuledOut = ({ ranked, house, names }: RuledOutProps) => {
  const tell = useTell();
  return (
    <table className="plain ruled-out">
      <thead>
        <tr>
          <th scope="col">{tell('set')}</th>
          <th scope="col">{tell('from the wanted place')}</th>
          <th scope="col">{tell('what is in the way')}</th>
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
};
