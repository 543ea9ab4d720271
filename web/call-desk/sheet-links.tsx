/** Sheets that are made from the record of the call. */
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';

export const SheetLinks = () => {
  const tell = useTell();
  const links = [
    ['handover', tell('Handover note')],
    ['preset-check', tell('Preset check')],
    [null, tell('All sheets')],
  ] as const;
  return (
    <p className="call-links">
      {links.map(([sheet, words]) => (
        <Link key={words} to={{ kind: 'sheets', sheet }}>
          {words}
        </Link>
      ))}
    </p>
  );
};
