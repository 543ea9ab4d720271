/**
 * A sample of each kind of brick, weighed one by one. Mean, spread and tolerance are the engine's;
 * until three are weighed there is no sample, and what was typed waits on this page.
 */
import { useState } from 'react';
import { type BrickKind, type House, SAMPLE_LEAST } from '#house';
import type { Refusal } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { sayMeasure } from '#sheets';
import { phrase } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { Echo } from '../grid/echo.tsx';
import { shownText } from '../grid/typed-marks.ts';
import { useHouseEditing } from '../house-entry/house-desk.ts';
import { exampleIn, readFigure } from '../house-entry/typed-figures.ts';
import { at, isList, type JsonObject, withAt } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TextField } from './choice-field.tsx';
import { useRecord, useWho } from './use-record.ts';

export const Samples = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <section aria-labelledby="samples-head">
      <h2 id="samples-head">{tell('A sample of bricks, weighed')}</h2>
      <p className="quiet">
        {tell(
          'Take them at random from all that the house owns of the kind, and weigh each by itself.',
        )}
      </p>
      {house.brickKinds.length === 0 ? (
        <p className="empty-words">{tell('No kind of brick is entered yet.')}</p>
      ) : null}
      {house.brickKinds.map((kind) => (
        <Sample key={kind.id} kind={kind} />
      ))}
    </section>
  );
};

const kindIndex = (root: JsonObject, id: string): number => {
  const kinds = root['brickKinds'];
  return isList(kinds) ? kinds.findIndex((kind) => at(kind, ['id']) === id) : -1;
};

const weightsOf = (root: JsonObject, id: string): readonly string[] => {
  const weights = at(root, ['brickKinds', kindIndex(root, id), 'sample', 'weights']);
  return isList(weights) ? weights.map(String) : [];
};

type Sampled = { readonly weights: readonly string[]; readonly on: string; readonly by: string };

/** The mass that was written before the bricks were weighed may not agree with the scales. */
const withSample = (
  root: JsonObject,
  id: string,
  sample: Sampled,
  keepsMass: boolean,
): JsonObject => {
  const path = ['brickKinds', kindIndex(root, id)];
  const next = withAt(root, [...path, 'sample'], { told: 'each', ...sample }) as JsonObject;
  return keepsMass ? next : (withAt(next, [...path, 'mass'], undefined) as JsonObject);
};

/** The weights so far; they are kept as soon as they make a sample and somebody stands by them. */
const useWeighing = (kind: BrickKind) => {
  const tell = useTell();
  const { root, house, change } = useHouseEditing();
  const record = useRecord();
  const who = useWho();
  const [typed, setTyped] = useState<readonly string[] | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const weights = typed ?? weightsOf(root, kind.id);
  const put = (next: readonly string[], keepsMass = true): void => {
    setTyped(next);
    setRefusals([]);
    if (next.length < SAMPLE_LEAST || who.by.trim() === '') return;
    const sample = { weights: next, on: record.now().slice(0, 10), by: who.by.trim() };
    const refused = change({
      write: (document) => withSample(document, kind.id, sample, keepsMass),
      what: `sample of ${kind.name}: ${next.length} weighed`,
    });
    setRefusals(refused);
    if (refused.length === 0) setTyped(null);
  };
  const isWaiting = typed !== null && refusals.length === 0;
  const few = tell('{count} of at least {least}: not kept yet.', {
    count: weights.length,
    least: SAMPLE_LEAST,
  });
  const nobody = who.by.trim() === '' ? tell('Still to say: who weighed them.') : '';
  /** False where what was typed reads two ways. */
  const add = (text: string): boolean => {
    const read = readFigure('mass', text, decimalMarkOf(house), `brickKinds.${kind.id}.sample`);
    if (read.ok) put([...weights, read.value]);
    else setRefusals([read.error]);
    return read.ok;
  };
  const words = !isWaiting ? '' : weights.length < SAMPLE_LEAST ? few : nobody;
  return { who, weights, refusals, words, isWaiting, put, add };
};

const weighedWords = (weights: readonly string[], house: House): string =>
  weights.length === 0
    ? phrase(house, 'None weighed here yet.')
    : phrase(house, 'Weighed: {weights}.', {
        weights: shownText(weights.join('; '), decimalMarkOf(house)),
      });

const Sample = ({ kind }: { readonly kind: BrickKind }) => {
  const tell = useTell();
  const { house } = useWork();
  const { who, weights, refusals, words, isWaiting, put, add } = useWeighing(kind);
  const [weight, setWeight] = useState('');
  return (
    <form
      className="found-form"
      aria-label={tell('Sample of {name}', { name: kind.name })}
      onSubmit={(event) => {
        event.preventDefault();
        // Enter in the field of the name keeps what waits for it.
        if (weight.trim() === '' && isWaiting) put(weights);
        if (weight.trim() === '' || add(weight.trim())) setWeight('');
      }}
    >
      <h3>
        {kind.id}, {kind.name}
      </h3>
      <SampleFacts kind={kind} />
      <p className="sample-weights">{weighedWords(weights, house)}</p>
      <div className="found-fields">
        <div>
          <TextField
            label={tell('Weight of one more {name}', { name: kind.name })}
            value={weight}
            hint={tell('such as {example}', { example: exampleIn('mass', house) })}
            onType={setWeight}
          />
          <Echo text={weight} dimension="mass" units={house.units} />
        </div>
        <TextField
          label={tell('Weighed by')}
          value={who.by}
          hint={tell('name or post')}
          onType={who.type}
        />
      </div>
      <NotKept refusals={refusals} onWithoutMass={() => put(weights, false)} />
      <p className="buttons">
        <button type="submit" disabled={weight.trim() === '' && !isWaiting}>
          {tell('Add this weight')}
        </button>
        <button
          type="button"
          disabled={weights.length === 0}
          onClick={() => put(weights.slice(0, -1))}
        >
          {tell('Take the last one off')}
        </button>
        <span role="status">{words}</span>
      </p>
    </form>
  );
};

type NotKeptProps = {
  readonly refusals: readonly Refusal[];
  readonly onWithoutMass: () => void;
};

const NotKept = ({ refusals, onWithoutMass }: NotKeptProps) => {
  const tell = useTell();
  if (refusals.length === 0) return null;
  const isContradicted = refusals.some(({ path }) => path.endsWith('.mass'));
  return (
    <Notice degree="caution" title={tell('the sample was not kept, nothing changed')} isNews>
      <RefusalsWithPlace refusals={refusals} />
      {isContradicted ? (
        <p className="buttons">
          <button type="button" onClick={onWithoutMass}>
            {tell('Keep the sample, and take the written mass away')}
          </button>
        </p>
      ) : null}
    </Notice>
  );
};

const SampleFacts = ({ kind }: { readonly kind: BrickKind }) => {
  const tell = useTell();
  const { house } = useWork();
  const say = (value: number): string =>
    sayMeasure({ value, kind: 'mass' }, house, { style: 'fine' });
  const { sample, mass } = kind;
  const tolerance = mass.known && mass.tolerance !== undefined ? ` ± ${say(mass.tolerance)}` : '';
  const facts: readonly (readonly [string, string])[] = [
    [tell('mass of one'), mass.known ? `${say(mass.value)}${tolerance}` : tell('unknown')],
    ...(sample === undefined
      ? []
      : ([
          [tell('weighed'), String(sample.count)],
          [tell('mean'), say(sample.mean)],
          [
            tell('lightest to heaviest'),
            tell('{low} to {high}', { low: say(sample.least), high: say(sample.most) }),
          ],
          [tell('standard deviation'), say(sample.deviation)],
        ] as const)),
  ];
  return (
    <dl className="found-facts">
      {facts.map(([term, words]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
};
