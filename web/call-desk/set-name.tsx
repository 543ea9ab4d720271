/** Number and name of a set, large, and the way to it. */
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { setPlace } from './desk-parts.ts';

export const SetName = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  return (
    <h3 className="call-set-name">
      <Link to={setPlace(each.id)}>
        <b>{each.id}</b> {each.set.hang?.name ?? tell('empty by the plan')}
      </Link>
    </h3>
  );
};
