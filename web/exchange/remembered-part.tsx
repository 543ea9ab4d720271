/** A mapping kept on this device under a name, and offered again for the same headings. */
import { useId, useState } from 'react';
import { useTell } from '../language/use-tell.ts';
import type { MappingState } from './mapping-choices.ts';
import { asRemembered, forget, headsOf, remember, rememberedFor } from './remembered.ts';
import { shownText } from './shown-text.ts';

type PartProps = {
  readonly file: string;
  readonly state: MappingState;
  readonly onTake: (state: MappingState) => void;
};

/** The whole of it was said by a person, once. */
const taken = (mapping: MappingState['mapping']): MappingState => ({
  mapping,
  own: new Set(mapping.columns.map((_, at) => at)),
});

export const RememberedPart = ({ file, state, onTake }: PartProps) => {
  const tell = useTell();
  const id = useId();
  const [name, setName] = useState(() => file.replace(/\.[a-z]+$/i, ''));
  const [said, setSaid] = useState('');
  const fitting = rememberedFor(localStorage, headsOf(state.mapping));
  const keep = (): void => {
    const isKept = remember(localStorage, name, state.mapping);
    setSaid(
      isKept
        ? tell('Kept on this device as {name}.', { name: name.trim() })
        : tell('This device keeps nothing.'),
    );
  };
  return (
    <div className="remembered">
      {fitting.map((one) => (
        <p key={one.name} className="buttons">
          <span>
            {tell('These headings were mapped before, as {name}.', { name: shownText(one.name) })}
          </span>
          <button type="button" onClick={() => onTake(taken(asRemembered(state.mapping, one)))}>
            {tell('Map them as {name}', { name: shownText(one.name) })}
          </button>
          <button
            type="button"
            onClick={() => {
              forget(localStorage, one);
              setSaid(tell('{name} is forgotten.', { name: one.name }));
            }}
          >
            {tell('Forget {name}', { name: shownText(one.name) })}
          </button>
        </p>
      ))}
      <details>
        <summary>{tell('Keep this mapping on this device')}</summary>
        <div className="exchange-fields">
          <div className="exchange-field">
            <label htmlFor={id}>{tell('under the name')}</label>
            <input
              id={id}
              value={name}
              maxLength={60}
              onChange={({ target }) => setName(target.value)}
            />
          </div>
          <button type="button" disabled={name.trim() === ''} onClick={keep}>
            {tell('Keep it')}
          </button>
        </div>
      </details>
      <p role="status" className="quiet">
        {said}
      </p>
    </div>
  );
};
