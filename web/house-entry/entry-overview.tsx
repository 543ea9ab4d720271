/** All parts of the form with what is unknown in each, the next measurement, and first steps. */
import { askedOf } from '#documents';
import { phraseCount, told } from '#texts';
import { Link } from '../address/link.tsx';
import { blockedWords, unknownWords } from '../house-page/unknown-words.ts';
import { Unknowns } from '../house-page/unknowns.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { countsOf, countWords, mostWaitedFor, placeOfValue } from './asked-words.ts';
import { firstSteps } from './first-steps.ts';
import { PARTS } from './parts.ts';

export const EntryOverview = () => {
  const tell = useTell();
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
        <h2 id="entry-parts">{tell('Parts of the form')}</h2>
        <ul>
          {PARTS.map((part) => (
            <li key={part.id}>
              <Link to={{ kind: 'house', part: 'enter', at: null, inside: part.id }}>
                {tell(part.title)}
              </Link>
              <span className="quiet">{tell(part.about)}</span>
              <span className="entry-count">
                {countWords(part, counts, work.documents.house, house)}
              </span>
            </li>
          ))}
        </ul>
      </section>
      <Unknowns />
    </>
  );
};

const NextMeasurement = ({ asked }: { readonly asked: ReturnType<typeof askedOf> }) => {
  const tell = useTell();
  const { house } = useWork();
  const next = mostWaitedFor(asked);
  if (next === null) return null;
  return (
    <section aria-labelledby="entry-next" className="entry-next">
      <h2 id="entry-next">{tell('Most useful to find out next')}</h2>
      <p>
        <Link to={placeOfValue(next.path)}>{unknownWords(next, house)}</Link>
        {phraseCount(
          house,
          next.sets,
          [
            '. Without it nobody can say {blocks}: {count} set waits for it.',
            '. Without it nobody can say {blocks}: {count} sets wait for it.',
          ],
          { blocks: blockedWords(next.blocks, house) },
        )}
      </p>
    </section>
  );
};

const FirstSteps = () => {
  const tell = useTell();
  const work = useWork();
  const steps = firstSteps(work);
  const next = steps.find(({ isDone }) => !isDone);
  return (
    <section aria-labelledby="first-steps" className="entry-steps">
      <h2 id="first-steps">{tell('From a blank house to a balance card')}</h2>
      <ol>
        {steps.map((step) => (
          <li key={step.words} aria-current={step === next ? 'step' : undefined}>
            <Link to={step.to}>{tell(step.words)}</Link>
            <span className="entry-count">
              {step.isDone ? tell('entered') : step === next ? tell('next') : tell('later')}
            </span>
            {step.needs.length === 0 || step.isDone ? null : (
              <ul className="plain-list quiet" aria-label={tell('Still asked for')}>
                {step.needs.map((need) => (
                  <li key={need}>{told(work.house, need)}</li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
};
