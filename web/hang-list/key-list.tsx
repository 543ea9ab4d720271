/** The keys of the hang list, to be read on the page. */
import { memo } from 'react';
import { KEY_GROUPS } from '../frame/keys.ts';
import { useTell } from '../language/use-tell.ts';

export const KeyList = memo(() => {
  const tell = useTell();
  const keys = KEY_GROUPS.filter(({ on }) => on.includes('hangList')).flatMap((each) => each.keys);
  return (
    <details className="key-list">
      <summary>{tell('Keys of this list')}</summary>
      <p className="quiet">{tell('On an Apple keyboard Command stands for Control.')}</p>
      <dl>
        {keys.map(([each, what]) => (
          <div key={each}>
            <dt>{tell(each)}</dt>
            <dd>{tell(what)}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
});
KeyList.displayName = 'KeyList';
