/** Pull tests and weighings in a call: what was read off, in the units of who reads. */
import { useState } from 'react';
import type { Refusal } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { sayMeasure } from '#sheets';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { Echo } from '../grid/echo.tsx';
import { exampleIn } from '../house-entry/typed-figures.ts';
import { ChoiceField, TextField } from '../house-found/choice-field.tsx';
import { missingPulls, NO_PULLS, PullFields, type Pulls } from '../house-found/pull-fields.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { CallForm } from './call-form.tsx';
import { readMeasure } from './measures.ts';
import type { SetOnDesk } from './set-on-desk.ts';

const withPost = (desk: SetOnDesk): readonly string[] =>
  desk.post === null ? [message('the post of this device')] : [];

export const PullForm = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const saying = useSay();
  const { id, house, isLive, post } = desk;
  const [pulls, setPulls] = useState(NO_PULLS);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const type = (part: Partial<Pulls>): void => {
    setPulls({ ...pulls, ...part });
    setRefusals([]);
  };
  const send = (): void => {
    const mark = decimalMarkOf({ units: house.units, ...voice });
    const out = readMeasure('force', pulls.out, { mark, path: 'out' });
    const inward = readMeasure('force', pulls.in, { mark, path: 'in' });
    const height = readMeasure('length', pulls.height, { mark, path: 'height' });
    if (!out.ok || !inward.ok || !height.ok || post === null) {
      setRefusals([out, inward, height].flatMap((each) => (each.ok ? [] : [each.error])));
      return;
    }
    const read = { out: out.value, in: inward.value, height: height.value };
    saying.say({ kind: 'pull tested', set: id, payload: { post, ...read } });
    setPulls(NO_PULLS);
  };
  const missing = [...withPost(desk), ...missingPulls(pulls)];
  return (
    <CallForm
      title={tell('Pull test of set {id}, both ways', { id })}
      about={tell(
        'Steady pulls on the hand line with a gauge, at one height. A set that goes by itself ' +
          'has a pull below nothing: what holds it back, with a minus.',
      )}
      missing={missing}
      refusals={refusals}
      saying={saying}
      isLive={isLive}
      button={tell('Record the pull test')}
      onSend={send}
    >
      <PullPart desk={desk} pulls={pulls} onType={type} />
    </CallForm>
  );
};

type PullPartProps = {
  readonly desk: SetOnDesk;
  readonly pulls: Pulls;
  readonly onType: (part: Partial<Pulls>) => void;
};

const PullPart = ({ desk: { house, set }, pulls, onType }: PullPartProps) => {
  const tell = useTell();
  const { pullTest } = set;
  return (
    <>
      {pullTest === null ? null : (
        <p>
          {tell('In this call: {out} out, {in} in, at {height}.', {
            out: sayMeasure({ value: pullTest.out, kind: 'force' }, house),
            in: sayMeasure({ value: pullTest.in, kind: 'force' }, house),
            height: sayMeasure({ value: pullTest.height, kind: 'length' }, house),
          })}
        </p>
      )}
      <div className="found-fields">
        <PullFields house={house} pulls={pulls} onType={onType} />
      </div>
      <Echo text={pulls.out} dimension="force" units={house.units} />
      <Echo text={pulls.in} dimension="force" units={house.units} />
      <Echo text={pulls.height} dimension="length" units={house.units} />
    </>
  );
};

export const WeighForm = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const saying = useSay();
  const { id, house, isLive, post, pieces } = desk;
  const [item, setItem] = useState('');
  const [mass, setMass] = useState('');
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const send = (): void => {
    const mark = decimalMarkOf({ units: house.units, ...voice });
    const read = readMeasure('mass', mass, { mark, path: 'mass' });
    if (!read.ok || post === null) {
      setRefusals(read.ok ? [] : [read.error]);
      return;
    }
    saying.say({ kind: 'item weighed', set: id, payload: { post, item, mass: read.value } });
    setMass('');
  };
  const missing = [
    ...withPost(desk),
    ...(item === '' ? [message('the piece')] : []),
    ...(mass.trim() === '' ? [message('what it weighs')] : []),
  ];
  if (pieces.length === 0) return null;
  return (
    <CallForm
      title={tell('Weighed: a piece of set {id}', { id })}
      about={tell('It goes into the imbalance now, and into the take-off of the next hang.')}
      missing={missing}
      refusals={refusals}
      saying={saying}
      isLive={isLive}
      button={tell('Record the weighing')}
      onSend={send}
    >
      <Weighed desk={desk} />
      <div className="found-fields">
        <ChoiceField
          label={tell('Piece')}
          value={item}
          none={tell('not said')}
          choices={pieces.map((piece) => [piece.id, piece.name] as const)}
          onChoose={setItem}
        />
        <TextField
          label={tell('It weighs')}
          value={mass}
          hint={tell('such as {example}', { example: exampleIn('mass', house) })}
          onType={(typed) => {
            setMass(typed);
            setRefusals([]);
          }}
        />
      </div>
      <Echo text={mass} dimension="mass" units={house.units} />
    </CallForm>
  );
};

const Weighed = ({ desk: { set, pieces, house } }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const all = Object.entries(set.weighed);
  return all.length === 0 ? null : (
    <ul className="call-lines">
      {all.map(([piece, massKg]) => (
        <li key={piece}>
          {tell('{piece}: {mass}, weighed in this call', {
            piece: pieces.find((each) => each.id === piece)?.name ?? piece,
            mass: sayMeasure({ value: massKg, kind: 'mass' }, house),
          })}
        </li>
      ))}
    </ul>
  );
};
