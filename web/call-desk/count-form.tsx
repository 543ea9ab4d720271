/** Loose bricks of a gallery, counted anew in the call: empty is not counted, nought is nought. */
import { useState } from 'react';
import type { Gallery, House } from '#house';
import type { Refusal } from '#outcome';
import type { HouseNow, PostId } from '#state';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { TextField } from '../house-found/choice-field.tsx';
import { useTell } from '../language/use-tell.ts';
import { CallForm } from './call-form.tsx';
import { stockOf } from './count-draft.ts';

type CountProps = {
  readonly gallery: Gallery;
  readonly now: HouseNow;
  readonly house: House;
  readonly isLive: boolean;
  readonly post: PostId | null;
};

type Counts = Readonly<Record<string, string>>;

export const CountForm = ({ gallery, house, isLive, post }: CountProps) => {
  const tell = useTell();
  const saying = useSay();
  const [typed, setTyped] = useState<Counts>({});
  const [second, setSecond] = useState('');
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const isEmpty = Object.values(typed).every((text) => text.trim() === '');
  const send = (): void => {
    const stock = stockOf(typed);
    if (!stock.ok || post === null) {
      setRefusals(stock.ok ? [] : stock.error);
      return;
    }
    const payload = {
      post,
      gallery: gallery.id,
      stock: stock.value,
      second: second.trim() || null,
    };
    saying.say({ kind: 'gallery counted', set: null, payload });
    setTyped({});
    setSecond('');
  };
  return (
    <CallForm
      title={tell('Count the {gallery} anew', { gallery: gallery.name })}
      about={tell(
        'Every kind that lies there. A kind that is left empty is not known from then on.',
      )}
      missing={[
        ...(post === null ? [message('the post of this device')] : []),
        ...(isEmpty ? [message('a count')] : []),
      ]}
      refusals={refusals}
      saying={saying}
      isLive={isLive}
      button={tell('Record the count')}
      onSend={send}
    >
      <div className="found-fields">
        <Kinds
          house={house}
          typed={typed}
          onType={(counts) => {
            setTyped(counts);
            setRefusals([]);
          }}
        />
        <TextField
          label={tell('Second person who counted')}
          value={second}
          hint={tell('name, or empty')}
          onType={setSecond}
        />
      </div>
    </CallForm>
  );
};

type KindsProps = {
  readonly house: House;
  readonly typed: Counts;
  readonly onType: (typed: Counts) => void;
};

const Kinds = ({ house, typed, onType }: KindsProps) => {
  const tell = useTell();
  return house.brickKinds.map(({ id, name }) => (
    <TextField
      key={id}
      label={tell('{name}, loose', { name })}
      value={typed[id] ?? ''}
      hint={tell('not counted')}
      onType={(text) => onType({ ...typed, [id]: text })}
    />
  ));
};
