import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';

export const RevisionsLink = ({ id, name }: { readonly id: string; readonly name: string }) => {
  const tell = useTell();
  return (
    <Link to={{ kind: 'documents', document: id, older: null, newer: null }}>
      {tell('Revisions')}
      <span className="only-said">{tell(' of {name}', { name })}</span>
    </Link>
  );
};
