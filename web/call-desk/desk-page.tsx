/** The desk of a call: opening and closing it, its posts, the overview, and one set whole. */

import { ClosePage } from './close-page.tsx';
import { DeskFrame } from './desk-frame.tsx';
import { CALL_PARTS, type CallPart } from './desk-parts.ts';
import { HeadPage } from './head-page.tsx';
import { NoSuchSet } from './no-such-set.tsx';
import { OpenPage } from './open-page.tsx';
import { PostsPage } from './posts-page.tsx';
import { CallSetPage } from './set-page.tsx';
import { type OpenDesk, setOnDesk, useDesk } from './use-desk.ts';
import './call-desk.css';

/** Null where the address is of no screen of the desk. */
export const deskPart = ([part = '', id, ...more]: readonly string[]): CallPart | null => {
  const found = CALL_PARTS.find((each) => each === part) ?? null;
  if (more.length > 0 || (found === 'set') !== (id !== undefined)) return null;
  return found;
};

export const DeskPage = ({ path }: { readonly path: readonly string[] }) => {
  const open = useDesk();
  const part = deskPart(path);
  return (
    <DeskFrame open={open} part={part}>
      {open === null || part === 'open' ? (
        <OpenPage open={open} />
      ) : (
        <OfCall open={open} part={part} set={path[1] ?? ''} />
      )}
    </DeskFrame>
  );
};

type OfCallProps = {
  readonly open: OpenDesk;
  readonly part: CallPart | null;
  readonly set: string;
};

const OfCall = ({ open, part, set }: OfCallProps) => {
  if (part === 'posts') return <PostsPage open={open} />;
  if (part === 'close') return <ClosePage open={open} />;
  if (part !== 'set') return <HeadPage open={open} />;
  const desk = setOnDesk(open, set);
  return desk === null ? <NoSuchSet id={set} /> : <CallSetPage key={set} open={open} desk={desk} />;
};
