import type { Refusal } from '#outcome';

/** What was found and what is accepted; the data that stood there stays as it was. */
export const Refusals = ({ refusals }: { readonly refusals: readonly Refusal[] }) => (
  <ul className="refusals">
    {refusals.map(({ code, path, found, accepted }) => (
      <li key={`${code} ${path}`}>
        Found {found}. Accepted: {accepted}. <span className="code">{code}</span>
      </li>
    ))}
  </ul>
);

/** The same with the place in the document, for one that cannot be opened at all. */
export const RefusalsWithPlace = ({ refusals }: { readonly refusals: readonly Refusal[] }) => (
  <ul className="refusals">
    {refusals.map(({ code, path, found, accepted }) => (
      <li key={`${code} ${path}`}>
        <b>{path || 'the whole document'}</b>: found {found}. Accepted: {accepted}.{' '}
        <span className="code">{code}</span>
      </li>
    ))}
  </ul>
);
