/** Who is signed in, in the title strip; the way to people and devices. */
import { memo } from 'react';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { useSession } from './session.ts';

export const SessionEntry = memo(() => {
  const tell = useTell();
  const session = useSession();
  const name = session?.name ?? (session?.kind === 'nobody' ? tell('Sign in') : tell('People'));
  const part = session?.kind === 'nobody' ? 'signIn' : 'list';
  return (
    <Link to={{ kind: 'people', part }} className="session-entry">
      {session?.kind === 'person' ? (
        <span className="only-said">{tell('Signed in as')} </span>
      ) : null}
      {name}
    </Link>
  );
});
SessionEntry.displayName = 'SessionEntry';
