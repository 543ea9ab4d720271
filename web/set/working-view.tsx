import type { Working } from '#findings';
import { sayWorking } from '#sheets';
import { told } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';

/** How a figure came about: in symbols, with the numbers in, the result, the limit, the source. */
export const WorkingView = ({ working }: { readonly working: Working }) => {
  const tell = useTell();
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
            <th scope="col">{tell('sign')}</th>
            <th scope="col">{tell('what it is')}</th>
            <th scope="col" className="number">
              {tell('value')}
            </th>
          </tr>
        </thead>
        <tbody>
          {said.terms.map(({ symbol, meaning, value, source }) => (
            <tr key={symbol}>
              <th scope="row">{symbol}</th>
              <td>
                {meaning}
                {source === null ? null : <small> {told(house, source)}</small>}
              </td>
              <td className="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        {tell('Source: {source}.', { source: said.source })}
        {said.omits === null ? '' : ` ${tell('Left out: {omits}.', { omits: said.omits })}`}
      </p>
    </div>
  );
};
