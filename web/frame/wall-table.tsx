import type { SetAssessment } from '#assessment';
import { glyphWord } from '#drawings';
import { sayMeasure, sayMoment } from '#sheets';
import { phrase } from '#texts';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import type { Work } from '../reckoning/use-work.ts';
import { useWork } from '../reckoning/use-work.ts';
import { useWallSets, type WallSets } from './wall-sets.ts';

/** What the drawing says, to be read in order. */
const rowOf = (set: SetAssessment, signs: WallSets['signs'], { house }: Work) => {
  const { state } = set.recorded;
  const { balance, hold, word } = signs(set);
  const { height, knowledge } = state;
  return {
    id: set.lineSet.id,
    name: set.hang?.name ?? phrase(house, 'empty'),
    height: height === null ? 'unknown' : sayMeasure({ value: height.high, kind: 'length' }, house),
    balance: balance === null ? phrase(house, 'none to show') : glyphWord(house, balance),
    hold: hold === null ? phrase(house, 'its own machine or line') : glyphWord(house, hold),
    word: word ?? '',
    recorded:
      knowledge.at === null ? phrase(house, 'not recorded') : sayMoment(knowledge.at, house),
  };
};

export const WallTable = () => {
  const tell = useTell();
  const work = useWork();
  const { sets, signs } = useWallSets();
  return (
    <section className="wide" aria-label={tell('The wall as a table')}>
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">{tell('set')}</th>
            <th scope="col">{tell('hangs there')}</th>
            <th scope="col">{tell('batten at')}</th>
            <th scope="col">{tell('balance')}</th>
            <th scope="col">{tell('held by')}</th>
            <th scope="col">{tell('state')}</th>
            <th scope="col">{tell('recorded')}</th>
          </tr>
        </thead>
        <tbody>
          {sets.map((set) => {
            const row = rowOf(set, signs, work);
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
