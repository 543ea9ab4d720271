import type { Gallery, House, Known } from '#house';
import { phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
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
    phrase(house, '{low} to {high}', {
      low: length(gallery.reachLow),
      high: length(gallery.reachHigh),
    }),
    phrase(house, '{length} by {width}', {
      length: length(gallery.length),
      width: length(gallery.width),
    }),
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
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Galleries')}
      columns={[
        { head: tell('gallery') },
        { head: tell('floor at'), isNumber: true },
        { head: tell('reach above it'), isNumber: true },
        { head: tell('length by width'), isNumber: true },
        { head: tell('floor carries'), isNumber: true },
        { head: tell('along its length'), isNumber: true },
        { head: tell('courses'), isNumber: true },
        { head: tell('people and tools'), isNumber: true },
        { head: tell('limit known by') },
      ]}
      rows={house.galleries.map((each) => ({ key: each.id, cells: cellsOf(each, house) }))}
      empty={tell('No gallery is described yet: nobody can be said to reach a brick.')}
    />
  );
};
