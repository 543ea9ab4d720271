import type { Gallery, House, Known } from '#house';
import { useWork } from '../reckoning/use-work.ts';
import { knownWords } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const cellsOf = (gallery: Gallery, house: House): readonly string[] => {
  const length = (known: Known<number>): string =>
    knownWords(known, house, { kind: 'length' }).value;
  const floor = knownWords(gallery.floorLimit, house, { kind: 'pressure', round: 'down' });
  const line = knownWords(gallery.lineLoadLimit, house, { kind: 'forcePerLength', round: 'down' });
  return [
    gallery.name,
    length(gallery.floor),
    `${length(gallery.reachLow)} to ${length(gallery.reachHigh)}`,
    `${length(gallery.length)} by ${length(gallery.width)}`,
    floor.value,
    line.value,
    knownWords(gallery.coursesAllowed, house, { kind: 'count' }).value,
    knownWords(gallery.peopleAndTools, house, { kind: 'mass', round: 'up' }).value,
    [floor.basis || line.basis, floor.source || line.source]
      .filter((part) => part !== '')
      .join(': '),
  ];
};

export const Galleries = () => {
  const { house } = useWork();
  return (
    <RuledTable
      title="Galleries"
      columns={[
        { head: 'gallery' },
        { head: 'floor at', isNumber: true },
        { head: 'reach above it', isNumber: true },
        { head: 'length by width', isNumber: true },
        { head: 'floor carries', isNumber: true },
        { head: 'along its length', isNumber: true },
        { head: 'courses', isNumber: true },
        { head: 'people and tools', isNumber: true },
        { head: 'limit known by' },
      ]}
      rows={house.galleries.map((each) => ({ key: each.id, cells: cellsOf(each, house) }))}
      empty="No gallery is described yet: nobody can be said to reach a brick."
    />
  );
};
