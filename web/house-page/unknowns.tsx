/** What is still unknown and what waits for it, so that the next measurement can be chosen. */
import { type Unknown, unknownsOf } from '#documents';
import { Link } from '../address/link.tsx';
import { placeOfValue } from '../house-entry/asked-words.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { RuledTable } from './ruled-table.tsx';
import { blockedWords, unknownWords } from './unknown-words.ts';

/** What most things wait for stands first. */
const byWhatWaits = (
  unknowns: readonly Unknown[],
): readonly (readonly [string, readonly Unknown[]])[] => {
  const groups = new Map<string, Unknown[]>();
  for (const each of unknowns) groups.set(each.blocks, [...(groups.get(each.blocks) ?? []), each]);
  return [...groups].toSorted(([, one], [, other]) => other.length - one.length);
};

const List = ({ unknowns }: { readonly unknowns: readonly Unknown[] }) => {
  const voice = useVoice();
  return (
    <ul className="unknown-names">
      {unknowns.map((each) => (
        <li key={each.path}>
          <Link to={placeOfValue(each.path)}>{unknownWords(each, voice)}</Link>{' '}
          <span className="code">{each.path}</span>
        </li>
      ))}
    </ul>
  );
};

/** More than these would push the limits of the house off the screen. */
const SHOWN_AT_ONCE = 6;

const Names = ({ unknowns }: { readonly unknowns: readonly Unknown[] }) => {
  const tell = useTell();
  const voice = useVoice();
  const [first] = unknowns;
  if (unknowns.length <= SHOWN_AT_ONCE || first === undefined) return <List unknowns={unknowns} />;
  return (
    <details>
      <summary>
        {tell('{count} values, from {first}', {
          count: unknowns.length,
          first: unknownWords(first, voice),
        })}
      </summary>
      <List unknowns={unknowns} />
    </details>
  );
};

export const Unknowns = () => {
  const tell = useTell();
  const { house, show } = useWork();
  const unknowns = unknownsOf(house, show);
  return (
    <RuledTable
      title={tell('Still unknown')}
      note={tell('Nothing is guessed in its place: what depends on it is not worked out.')}
      columns={[
        { head: tell('cannot be said without it') },
        { head: tell('what is unknown, and where') },
      ]}
      rows={byWhatWaits(unknowns).map(([blocks, each]) => ({
        key: blocks,
        cells: [blockedWords(blocks, house), <Names key={blocks} unknowns={each} />],
      }))}
      empty={tell('Every value that this program asks of a house and its show is given.')}
    />
  );
};
