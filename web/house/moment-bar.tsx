/** Which moment is shown: the record, a trim, a cue, a step of an order. */
import { trimNames } from '#assessment';
import type { HousePart } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { type MomentChoice, writeMoment } from './moment-choice.ts';

type BarProps = { readonly part: HousePart; readonly choice: MomentChoice };

const goTo = (part: HousePart, choice: MomentChoice): void =>
  go({ kind: 'house', part, at: writeMoment(choice) });

export const MomentBar = ({ part, choice }: BarProps) => {
  const tell = useTell();
  const { sets } = useWork();
  const names = trimNames(sets.map(({ set }) => set));
  return (
    <fieldset className="moment-bar">
      <legend className="only-said">{tell('Moment shown')}</legend>
      <span className="quiet" aria-hidden="true">
        {tell('shown')}
      </span>
      <Link
        to={{ kind: 'house', part, at: null }}
        isHere={choice.of === 'record'}
        className="moment-link"
      >
        {tell('as recorded')}
      </Link>
      {names.length === 0 ? null : (
        <label className={choice.of === 'trim' ? 'here' : undefined}>
          {tell('a trim')}
          <select
            value={choice.of === 'trim' && names.includes(choice.name) ? choice.name : ''}
            onChange={({ target }) => goTo(part, { of: 'trim', name: target.value })}
          >
            <option value="" disabled>
              {tell('choose')}
            </option>
            {names.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </label>
      )}
      <CueChoice part={part} choice={choice} />
      {choice.of === 'order' ? <OrderSteps part={part} choice={choice} /> : null}
      <FitLink />
    </fieldset>
  );
};

const CueChoice = ({ part, choice }: BarProps) => {
  const tell = useTell();
  const { cues } = useWork().show;
  if (cues.length === 0) return null;
  return (
    <label className={choice.of === 'cue' ? 'here' : undefined}>
      {tell('a cue')}
      <select
        value={choice.of === 'cue' && choice.done <= cues.length ? choice.done : ''}
        onChange={({ target }) => goTo(part, { of: 'cue', done: Number(target.value) })}
      >
        <option value="" disabled>
          {tell('choose')}
        </option>
        <option value={0}>{tell('before the first')}</option>
        {cues.map(({ number, set, note }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: cues stand in the order of the show
          <option key={index} value={index + 1}>
            {note === undefined
              ? tell('after {number}, set {set}', { number, set })
              : tell('after {number}, set {set}: {note}', { number, set, note })}
          </option>
        ))}
      </select>
    </label>
  );
};

const FitLink = () => {
  const tell = useTell();
  return (
    <Link to={{ kind: 'anotherHouse', to: null, moved: null }} className="fit-link">
      {tell('fit the show to another house')}
    </Link>
  );
};

/** Step by step through one order of work; it is chosen on the order's own screen. */
const OrderSteps = ({
  part,
  choice,
}: {
  readonly part: HousePart;
  readonly choice: Extract<MomentChoice, { readonly of: 'order' }>;
}) => {
  const tell = useTell();
  return (
    <span className="moment-steps here">
      <button
        type="button"
        disabled={choice.done === 0}
        onClick={() => goTo(part, { ...choice, done: choice.done - 1 })}
      >
        {tell('Step back')}
      </button>
      <button type="button" onClick={() => goTo(part, { ...choice, done: choice.done + 1 })}>
        {tell('Next step')}
      </button>
    </span>
  );
};
