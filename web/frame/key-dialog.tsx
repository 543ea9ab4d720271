/** Every key on one card, above the screen it is about. */
import { useEffect, useRef } from 'react';
import type { Place } from '../address/address.ts';
import { useTell } from '../language/use-tell.ts';
import { keyGroupsFor } from './keys.ts';

type DialogProps = { readonly screen: Place['kind']; readonly onClose: () => void };

export const KeyDialog = ({ screen, onClose }: DialogProps) => {
  const tell = useTell();
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    ref.current?.showModal();
  }, []);
  return (
    <dialog ref={ref} className="key-card" aria-labelledby="key-card-title" onClose={onClose}>
      <div className="key-card-head">
        <h2 id="key-card-title">{tell('Keys')}</h2>
        <button type="button" onClick={() => ref.current?.close()}>
          {tell('Close')}
        </button>
      </div>
      <p className="quiet">{tell('On an Apple keyboard Command stands for Control.')}</p>
      <div className="key-groups">
        {keyGroupsFor(screen).map(({ title, keys }) => (
          <section key={title}>
            <h3>{tell(title)}</h3>
            <dl>
              {keys.map(([each, what]) => (
                <div key={each}>
                  <dt>{tell(each)}</dt>
                  <dd>{tell(what)}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </dialog>
  );
};
