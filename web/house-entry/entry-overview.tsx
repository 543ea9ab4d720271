/** All parts of the form with what is unknown in each, the next measurement, and first steps. */
import { askedOf } from '#documents';
import { inHouseWords } from '#sheets';
import { Link } from '../address/link.tsx';
import { Unknowns } from '../house-page/unknowns.tsx';
import { useWork } from '../reckoning/use-work.ts';
import { countsOf, countWords, mostWaitedFor, placeOfValue } from './asked-words.ts';
import { firstSteps } from './first-steps.ts';
import { PARTS } from './parts.ts';

export const EntryOverview = () => {
  const work = useWork();
  const { house, show } = work;
  const asked = askedOf(house, show);
  const counts = countsOf(asked);
  const isBegun = work.sets.some(({ set }) => set.plan.known);
  return (
    <>
      {isBegun ? null : <FirstSteps />}
      <NextMeasurement asked={asked} />
      <section aria-labelledby="entry-parts" className="entry-parts">
        <h2 id="entry-parts">Parts of the form</h2>
        <ul>
          {PARTS.map((part) => (
            <li key={part.id}>
              <Link to={{ kind: 'house', part: 'enter', at: null, inside: part.id }}>
                {inHouseWords(part.title, house)}
              </Link>
              <span className="quiet">{inHouseWords(part.about, house)}</span>
              <span className="entry-count">{countWords(part, counts, work.documents.house)}</span>
            </li>
          ))}
        </ul>
      </section>
      <Unknowns />
    </>
  );
};

const NextMeasurement = ({ asked }: { readonly asked: ReturnType<typeof askedOf> }) => {
  const next = mostWaitedFor(asked);
  if (next === null) return null;
  const sets = next.sets === 1 ? '1 set waits' : `${next.sets} sets wait`;
  return (
    <section aria-labelledby="entry-next" className="entry-next">
      <h2 id="entry-next">Most useful to find out next</h2>
      <p>
        <Link to={placeOfValue(next.path)}>{next.what}</Link>. Without it nobody can say{' '}
        {next.blocks}: {sets} for it.
      </p>
    </section>
  );
};

const FirstSteps = () => {
  const work = useWork();
  const steps = firstSteps(work);
  const next = steps.find(({ isDone }) => !isDone);
  return (
    <section aria-labelledby="first-steps" className="entry-steps">
      <h2 id="first-steps">From a blank house to a balance card</h2>
      <ol>
        {steps.map((step) => (
          <li key={step.words} aria-current={step === next ? 'step' : undefined}>
            <Link to={step.to}>{inHouseWords(step.words, work.house)}</Link>
            <span className="entry-count">
              {step.isDone ? 'entered' : step === next ? 'next' : 'later'}
            </span>
            {step.needs.length === 0 || step.isDone ? null : (
              <ul className="plain-list quiet" aria-label="Still asked for">
                {step.needs.map((need) => (
                  <li key={need}>{need}</li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
};
