/** That a post and those with it are out of every drop zone, hands off bricks; or back again. */
import type { HouseNow, PostId } from '#state';
import { useTell } from '../language/use-tell.ts';
import { HoldButton } from './hold-button.tsx';
import { useSay } from './use-say.ts';

/** A marshal keeps the edge of a zone, and these lead or call from outside one. */
const NOT_ASKED: readonly string[] = ['headFly', 'caller', 'motor', 'marshal'];

type SaysProps = {
  readonly post: PostId;
  readonly now: HouseNow;
  /** Nothing else is before this post. */
  readonly isNext: boolean;
};

export const PostSays = ({ post, now, isNext }: SaysProps) => {
  const tell = useTell();
  const saying = useSay();
  const held = now.posts[post];
  const [kind = ''] = post.split(':');
  if (held === undefined || NOT_ASKED.includes(kind)) return null;
  const { isClear } = held;
  const say = (): void =>
    saying.say({ kind: 'post said', set: null, payload: { post, isClear: !isClear } });
  const away = kind === 'gallery' ? tell('hands off, all clear') : tell('clear of every zone');
  const back = kind === 'gallery' ? tell('back at the edge') : tell('back in place');
  return (
    <>
      <HoldButton isNext={isNext} isOff={saying.isPending} onGiven={say}>
        {isClear ? back : away}
      </HoldButton>
      <p className="act-words" role="status">
        {isClear && !saying.isPending ? tell('Said: clear of every drop zone.') : ''}
        {saying.isPending || saying.isLost || saying.refused !== null ? saying.words : ''}
      </p>
    </>
  );
};
