import { Link } from '../address/link.tsx';

export const RevisionsLink = ({ id, name }: { readonly id: string; readonly name: string }) => (
  <Link to={{ kind: 'documents', document: id, older: null, newer: null }}>
    Revisions<span className="only-said"> of {name}</span>
  </Link>
);
