/** A form of the desk: what is still to be entered is said, and what became of it stands beside. */
import { type ReactNode, useId } from 'react';
import type { Refusal } from '#outcome';
import type { Saying } from '../call/use-say.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { useTell } from '../language/use-tell.ts';

type CallFormProps = {
  readonly title: string;
  readonly about?: string;
  /** What nobody has entered yet, in words. */
  readonly missing: readonly string[];
  readonly refusals?: readonly Refusal[];
  readonly saying: Saying;
  readonly isLive: boolean;
  readonly button: string;
  readonly onSend: () => void;
  readonly children?: ReactNode;
};

export const CallForm = (props: CallFormProps) => {
  const { title, about, missing, refusals = [], saying, isLive, button, onSend } = props;
  const tell = useTell();
  const id = useId();
  const isReady = missing.length === 0 && isLive && !saying.isPending;
  const wanting = missing.map((each) => tell(each)).join(', ');
  return (
    <form
      className="call-form"
      aria-labelledby={id}
      onSubmit={(event) => {
        event.preventDefault();
        if (isReady) onSend();
      }}
    >
      <h3 id={id}>{title}</h3>
      {about === undefined ? null : <p className="quiet">{about}</p>}
      {props.children}
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('not understood, nothing was sent')} isNews>
          <Refusals refusals={refusals} />
        </Notice>
      )}
      <p className="buttons">
        <button type="submit" disabled={!isReady}>
          {button}
        </button>
        <span role="status">
          {isLive ? '' : `${tell('Not live: it goes on paper, as a note.')} `}
          {missing.length === 0 ? '' : `${tell('Still to say: {missing}.', { missing: wanting })} `}
          {saying.words}
        </span>
      </p>
    </form>
  );
};
