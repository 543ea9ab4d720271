import type { Refusal } from '#outcome';
import { useTell } from '../language/use-tell.ts';

/** What was found and what is accepted; the data that stood there stays as it was. */
export const Refusals = ({ refusals }: { readonly refusals: readonly Refusal[] }) => {
  const tell = useTell();
  return (
    <ul className="refusals">
      {refusals.map(({ code, path, found, accepted }) => (
        <li key={`${code} ${path}`}>
          {tell('Found {found}. Accepted: {accepted}.', { found, accepted })}{' '}
          <span className="code">{code}</span>
        </li>
      ))}
    </ul>
  );
};

/** The same with the place in the document, for one that cannot be opened at all. */
export const RefusalsWithPlace = ({ refusals }: { readonly refusals: readonly Refusal[] }) => {
  const tell = useTell();
  return (
    <ul className="refusals">
      {refusals.map(({ code, path, found, accepted }) => (
        <li key={`${code} ${path}`}>
          <b>{path || tell('the whole document')}</b>
          {tell(': found {found}. Accepted: {accepted}.', { found, accepted })}{' '}
          <span className="code">{code}</span>
        </li>
      ))}
    </ul>
  );
};
