/** What the section shows, as a table: for a screen reader, and to look a figure up. */
import { type HouseMoment, lowestOf } from '#assessment';
import { tradeWord, upstageOf } from '#drawings';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { lengthWords } from './length-words.ts';

export const SectionTable = ({ moment }: { readonly moment: HouseMoment }) => {
  const tell = useTell();
  const { house, sets } = useWork();
  return (
    <details className="section-table">
      <summary>{tell('The same as a table')}</summary>
      <div className="house-table">
        <table className="plain">
          <thead>
            <tr>
              <th scope="col">{tradeWord(house, 'set')}</th>
              <th scope="col">{tell('hangs there')}</th>
              <th scope="col">{tell('upstage of the plaster line')}</th>
              <th scope="col">{tell('batten at')}</th>
              <th scope="col">{tell('lowest point at')}</th>
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
                      ? tell('unknown')
                      : isEmpty
                        ? tell('nothing')
                        : (set.hang?.name ?? tell('not in the show'))}
                  </td>
                  <td>{lengthWords(upstageOf(set), house)}</td>
                  <td>{lengthWords(now?.heightM ?? null, house)}</td>
                  <td>
                    {now === undefined ? tell('unknown') : lengthWords(lowestOf(set, now), house)}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
};
