/** How a drill ended, and what would have come of its fault. */
import type { Debrief, DrillEnd, DrillView } from '#call';
import type { House } from '#house';
import { energyWords } from '#sheets';
import type { OrderBrick } from '#state';
import { message, phrase, told } from '#texts';
import { postWords } from '../call-desk/desk-words.ts';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { faultWords, stepWords } from './drill-words.ts';
import type { Begun } from './use-drill.ts';

const CAUGHT = {
  count: message('Caught by the count, {post}, at {step}'),
  stop: message('Caught by STOP, {post}, at {step}'),
  doubt: message('Caught by a doubt, {post}, at {step}'),
  found: message('Found by the {post} at {step}, and the record is right again'),
} as const;

type Said = { readonly degree: 'note' | 'caution' | 'danger'; readonly title: string };

const ranTitle = (way: 'in' | 'out' | null, step: string, house: House): string =>
  way === 'out'
    ? phrase(house, 'not held: the batten ran out at {step}', { step })
    : phrase(house, 'not held: the batten ran in at {step}', { step });

const endSaid = (end: DrillEnd, titles: readonly string[], house: House): Said => {
  const step = stepWords(titles, end.step, house);
  if (end.is === 'caught') {
    const names = { post: postWords(end.by, house), step };
    return { degree: 'note', title: phrase(house, CAUGHT[end.how], names) };
  }
  if (end.is === 'ranAway') {
    return { degree: 'danger', title: ranTitle(end.ran.way, step, house) };
  }
  if (end.is === 'impossible') {
    const names = { post: postWords(end.by, house), step };
    const title = phrase(house, 'hands could not do it, {post}, at {step}', names);
    return { degree: 'caution', title };
  }
  if (end.is === 'refused') {
    const names = { post: postWords(end.by, house), step };
    const title = phrase(house, 'no leave was given, {post}, at {step}', names);
    return { degree: 'caution', title };
  }
  return end.isWrong
    ? { degree: 'caution', title: phrase(house, 'worked to its end, and the fault is still in it') }
    : { degree: 'note', title: phrase(house, 'Nothing was wrong with the set') };
};

const refusedWords = (end: DrillEnd, house: House): string => {
  if (end.is === 'impossible') {
    const { found, accepted } = end.why;
    return phrase(house, 'Found: {found}. Wanted: {accepted}.', {
      found: told(house, found),
      accepted: told(house, accepted),
    });
  }
  return end.is === 'refused' && end.answer.outcome === 'refused'
    ? `${end.answer.code}: ${told(house, end.answer.words)}`
    : '';
};

type Bricks = readonly OrderBrick[];

const freeWords = (
  { ran, mostJ, mostAt }: Debrief,
  { titles }: Begun,
  { bricks, house }: { readonly bricks: Bricks; readonly house: House },
): string => {
  const energy = energyWords(ran?.energyJ ?? mostJ, { bricks }, house);
  const step = stepWords(titles, ran?.step ?? mostAt, house);
  return ran === null
    ? phrase(
        house,
        'Something held it all the way. The most that it would have set free, had that given ' +
          'way: {energy}, at {step}.',
        { energy, step },
      )
    : phrase(
        house,
        'Had everybody gone on, nothing would have held it at {step}. It would have set free ' +
          '{energy}.',
        { energy, step },
      );
};

const DebriefView = ({
  debrief,
  begun,
  hasRun,
}: {
  readonly debrief: Debrief;
  readonly begun: Begun;
  /** It has been told what it set free. */
  readonly hasRun: boolean;
}) => {
  const tell = useTell();
  const { bricks } = begun;
  const { house } = useWork();
  const { plates, rule, count } = debrief;
  const at = (step: number): string => stepWords(begun.titles, step, house);
  return (
    <ul className="drill-debrief">
      {begun.fault === null ? null : <li>{faultWords(begun.fault, begun.titles, house)}.</li>}
      {plates.told === plates.truly ? null : (
        <li>{tell('{told} bricks are told to be on the arbor, and {truly} are on it.', plates)}</li>
      )}
      {hasRun ? null : (
        <li>
          <strong>{freeWords(debrief, begun, { bricks, house })}</strong>
        </li>
      )}
      {rule === null ? null : (
        <li>
          {tell(
            '{rule} would have kept leave back at {step}, had the record been true: {title}. A ' +
              'rule knows what it is told and nothing else.',
            { rule: rule.rule, step: at(rule.step), title: tell(rule.says) },
          )}
        </li>
      )}
      {count === null ? null : (
        <li>
          {tell(
            'The count before the lock is opened, at {step}, shows it to whoever counts and does ' +
              'not read it off.',
            { step: at(count.step) },
          )}
        </li>
      )}
      <li className="quiet">
        {tell(
          'Reckoned for the masses as they are written, without friction, and as if nobody did ' +
            'anything about it. A real set may do otherwise.',
        )}
      </li>
    </ul>
  );
};

export const DrillEnded = ({
  begun,
  view,
  onAnother,
}: {
  readonly begun: Begun;
  readonly view: DrillView;
  readonly onAnother: () => void;
}) => {
  const tell = useTell();
  const { house } = useWork();
  const { end, debrief } = view;
  const { bricks } = begun;
  if (end === null) return null;
  const { degree, title } = endSaid(end, begun.titles, house);
  const why = refusedWords(end, house);
  return (
    <section className="drill-ended" aria-label={tell('How the drill ended')}>
      <Notice degree={degree} title={title} isNews>
        {why === '' ? null : <p>{why}</p>}
        {end.is === 'ranAway' ? (
          <p>
            {tell('It set free {energy}. Nobody tries to stop it: everybody clears out.', {
              energy: energyWords(end.ran.energyJ, { bricks }, house),
            })}
          </p>
        ) : null}
      </Notice>
      {debrief === null ? (
        <p>{tell('No fault was planted.')}</p>
      ) : (
        <DebriefView debrief={debrief} begun={begun} hasRun={end.is === 'ranAway'} />
      )}
      <button type="button" className="button primary drill-next" onClick={onAnother}>
        {tell('Another drill')}
      </button>
    </section>
  );
};
