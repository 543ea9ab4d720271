/** What the section shows, as a table: for a screen reader, and to look a figure up. */
import { type HouseMoment, lowestOf } from '#assessment';
import { tradeWord, upstageOf } from '#drawings';
import { Link } from '../address/link.tsx';
import { useWork } from '../reckoning/use-work.ts';
import { lengthWords } from './length-words.ts';

export const SectionTable = ({ moment }: { readonly moment: HouseMoment }) => {
  const { house, sets } = useWork();
  return (
    <details className="section-table">
      <summary>The same as a table</summary>
      <div className="house-table">
        <table className="plain">
          <thead>
            <tr>
              <th scope="col">{tradeWord(house, 'set')}</th>
              <th scope="col">hangs there</th>
              <th scope="col">upstage of the {tradeWord(house, 'plasterLine')}</th>
              <th scope="col">{tradeWord(house, 'batten')} at</th>
              <th scope="col">lowest point at</th>
            </tr>
          </thead>
          <tbody>
            {sets.map(({ id, set }) => {
              const now = moment.sets.get(id);
              const isEmpty = now?.items?.length === 0;
              return (
                <tr key={id}>
                  <th scope="row">
                    <Link to={{ kind: 'set', set: id }}>{id}</Link>
                  </th>
                  <td>
                    {now === undefined || now.items === null
                      ? 'unknown'
                      : isEmpty
                        ? 'nothing'
                        : (set.hang?.name ?? 'not in the show')}
                  </td>
                  <td>{lengthWords(upstageOf(set), house)}</td>
                  <td>{lengthWords(now?.heightM ?? null, house)}</td>
                  <td>{now === undefined ? 'unknown' : lengthWords(lowestOf(set, now), house)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
};
