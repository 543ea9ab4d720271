import { measure } from '#findings';
import { byKnown, lack } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { HouseRule } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { pipeWeightCount, showCount } from './brick-use.ts';

/**
 * BRK-001: of every kind the house owns as many bricks as the plan puts on all arbors together,
 * pipe weight counted in. Bricks kept in reserve are the order of work.
 */
export const moreThanOwned: HouseRule = (the) => {
  const { house } = the;
  const uncounted = house.lineSets
    .filter(({ arbor }) => arbor !== null && arbor.pipeWeight === null)
    .map(({ id }) => lack(`pipe weight of set ${id}`, 'bricks against what is owned', 'house'));
  const found = house.brickKinds.flatMap(({ id, owned }) => {
    const show = showCount(the, id);
    const pipe = pipeWeightCount(house, id);
    if (show + pipe === 0) return [];
    return byKnown(
      owned,
      `number of bricks ${id}`,
      'bricks against what is owned',
      (ownedCount, source) => {
        if (!isAbove(show + pipe, ownedCount)) return [];
        const limit = measure(ownedCount, 'count');
        return [
          raise('BRK-001', {
            at: { brickKind: id },
            measured: measure(show + pipe, 'count'),
            limit,
            limitSource: source,
            facts: { kind: id },
            working: workedOut(
              'Bricks of one kind',
              's + p',
              [
                term('s', 'show bricks on all arbors', show, 'count'),
                term('p', 'pipe weight on all arbors', pipe, 'count'),
              ],
              term('bricks', 'bricks on all arbors', show + pipe, 'count'),
              { source: 'trade formula C62', limit: { value: limit, source } },
            ),
          }),
        ];
      },
      'house',
    );
  });
  return [...uncounted, ...found];
};
