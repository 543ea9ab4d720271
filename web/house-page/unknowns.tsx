/** What is still unknown and what waits for it, so that the next measurement can be chosen. */
import { type Unknown, unknownsOf } from '#documents';
import { Link } from '../address/link.tsx';
import { placeOfValue } from '../house-entry/asked-words.ts';
import { useWork } from '../reckoning/use-work.ts';
import { RuledTable } from './ruled-table.tsx';

/** What most things wait for stands first. */
const byWhatWaits = (
  unknowns: readonly Unknown[],
): readonly (readonly [string, readonly Unknown[]])[] => {
  const groups = new Map<string, Unknown[]>();
  for (const each of unknowns) groups.set(each.blocks, [...(groups.get(each.blocks) ?? []), each]);
  return [...groups].toSorted(([, one], [, other]) => other.length - one.length);
};

const List = ({ unknowns }: { readonly unknowns: readonly Unknown[] }) => (
  <ul className="unknown-names">
    {unknowns.map(({ path, what }) => (
      <li key={path}>
        <Link to={placeOfValue(path)}>{what}</Link> <span className="code">{path}</span>
      </li>
    ))}
  </ul>
);

/** More than these would push the limits of the house off the screen. */
const SHOWN_AT_ONCE = 6;

const Names = ({ unknowns }: { readonly unknowns: readonly Unknown[] }) =>
  unknowns.length <= SHOWN_AT_ONCE ? (
    <List unknowns={unknowns} />
  ) : (
    <details>
      <summary>
        {unknowns.length} values, from {unknowns[0]?.what}
      </summary>
      <List unknowns={unknowns} />
    </details>
  );

export const Unknowns = () => {
  const { house, show } = useWork();
  const unknowns = unknownsOf(house, show);
  return (
    <RuledTable
      title="Still unknown"
      note="Nothing is guessed in its place: what depends on it is not worked out."
      columns={[{ head: 'cannot be said without it' }, { head: 'what is unknown, and where' }]}
      rows={byWhatWaits(unknowns).map(([blocks, each]) => ({
        key: blocks,
        cells: [blocks, <Names key={blocks} unknowns={each} />],
      }))}
      empty="Every value that this program asks of a house and its show is given."
    />
  );
};
