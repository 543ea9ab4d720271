import type { Refusal } from '#outcome';
import { told } from '#texts';
import { useTell, useVoice } from '../language/use-tell.ts';

/** What was found and what is accepted; the data that stood there stays as it was. */
export const Refusals = ({ refusals }: { readonly refusals: readonly Refusal[] }) => {
  const tell = useTell();
  const voice = useVoice();
  return (
    <ul className="refusals">
      {refusals.map(({ code, path, found, accepted }) => (
        <li key={`${code} ${path}`}>
          {tell('Found {found}. Accepted: {accepted}.', {
            found: told(voice, found),
            accepted: told(voice, accepted),
          })}{' '}
          <span className="code">{code}</span>
        </li>
      ))}
    </ul>
  );
};

/** The same with the place in the document, for one that cannot be opened at all. */
export const RefusalsWithPlace = ({ refusals }: { readonly refusals: readonly Refusal[] }) => {
  const tell = useTell();
  const voice = useVoice();
  return (
    <ul className="refusals">
      {refusals.map(({ code, path, found, accepted }) => (
        <li key={`${code} ${path}`}>
          <b>{path || tell('the whole document')}</b>
          {tell(': found {found}. Accepted: {accepted}.', {
            found: told(voice, found),
            accepted: told(voice, accepted),
          })}{' '}
          <span className="code">{code}</span>
        </li>
      ))}
    </ul>
  );
};
