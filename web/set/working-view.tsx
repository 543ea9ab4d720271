import type { Working } from '#findings';
import { sayWorking } from '#sheets';
import { useWork } from '../reckoning/use-work.ts';

/** How a figure came about: in symbols, with the numbers in, the result, the limit, the source. */
export const WorkingView = ({ working }: { readonly working: Working }) => {
  const { house } = useWork();
  const said = sayWorking(working, house);
  return (
    <div className="working">
      <p className="formula">{said.symbols}</p>
      <p className="formula">{said.numbers}</p>
      <p className="formula">
        = <b>{said.result}</b>
        {said.limit === null ? '' : `; ${said.limit}`}
      </p>
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">sign</th>
            <th scope="col">what it is</th>
            <th scope="col" className="number">
              value
            </th>
          </tr>
        </thead>
        <tbody>
          {said.terms.map(({ symbol, meaning, value, source }) => (
            <tr key={symbol}>
              <th scope="row">{symbol}</th>
              <td>
                {meaning}
                {source === null ? null : <small> {source}</small>}
              </td>
              <td className="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        Source: {said.source}.{said.omits === null ? '' : ` Left out: ${said.omits}.`}
      </p>
    </div>
  );
};
