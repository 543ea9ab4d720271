import { glyphWord, tradeWord, wallSigns } from '#drawings';
import { sayMeasure, sayMoment } from '#sheets';
import { Link } from '../address/link.tsx';
import type { Work } from '../reckoning/use-work.ts';
import { useWork } from '../reckoning/use-work.ts';

/** What the drawing says, to be read in order. */
const rowOf = ({ set, id }: Work['sets'][number], { house, nowMs }: Work) => {
  const { state } = set.recorded;
  const { balance, hold, word } = wallSigns(set, house, nowMs);
  const { height, knowledge } = state;
  return {
    id,
    name: set.hang?.name ?? 'empty',
    height: height === null ? 'unknown' : sayMeasure({ value: height.high, kind: 'length' }, house),
    balance: balance === null ? 'none to show' : glyphWord(house, balance),
    hold: hold === null ? 'its own machine or line' : glyphWord(house, hold),
    word: word ?? '',
    recorded: knowledge.at === null ? 'not recorded' : sayMoment(knowledge.at),
  };
};

export const WallTable = () => {
  const work = useWork();
  return (
    <section className="wide" aria-label="The wall as a table">
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">set</th>
            <th scope="col">hangs there</th>
            <th scope="col">{tradeWord(work.house, 'batten')} at</th>
            <th scope="col">balance</th>
            <th scope="col">held by</th>
            <th scope="col">state</th>
            <th scope="col">recorded</th>
          </tr>
        </thead>
        <tbody>
          {work.sets.map((each) => {
            const row = rowOf(each, work);
            return (
              <tr key={row.id}>
                <th scope="row">
                  <Link to={{ kind: 'set', set: row.id }}>{row.id}</Link>
                </th>
                <td>{row.name}</td>
                <td>{row.height}</td>
                <td>{row.balance}</td>
                <td>{row.hold}</td>
                <td>{row.word}</td>
                <td>{row.recorded}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
};
