/** The order of a set: chosen by the head flyman, worked out from how it truly stands, and told. */
import { useEffect, useState } from 'react';
import type { CallDesk, CallDocuments } from '#call';
import { sayAssumption, sayBearing, sayPlan, sayWhyNoOrder } from '#sheets';
import type { HouseNow, PlanNow, Standing } from '#state';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { Notice } from '../frame/notice.tsx';
import { useTell, useTellCount, useVoice } from '../language/use-tell.ts';
import type { Asked } from '../order/question.ts';
import { search } from '../order/searcher.ts';
import { useWork } from '../reckoning/use-work.ts';
import { jobWords, stepWords } from './desk-words.ts';
import { caseInCall, type PlanFound, planFound, startOf } from './plan-in-call.ts';
import { nameOfPiece, type SetOnDesk } from './set-on-desk.ts';
import type { OpenDesk } from './use-desk.ts';

type Job = PlanNow['job'];
const JOBS: readonly Job[] = ['load', 'strike', 'change'];

const ASK = {
  load: message('Work out the load'),
  strike: message('Work out the strike'),
  change: message('Work out the change'),
} as const;

type PartProps = { readonly open: OpenDesk; readonly desk: SetOnDesk };

type Question = {
  readonly job: Job;
  readonly documents: CallDocuments;
  readonly desk: CallDesk;
  readonly now: HouseNow;
  readonly standing: Standing;
};

const askedOf = (set: string, job: Job): Asked => ({ set, job, from: 'recorded' });

/** The search for as long as the question stands; leaving the screen ends it. */
const usePlan = (set: string, question: Question | null) => {
  const [answer, setAnswer] = useState<{ of: Question; found: PlanFound } | null>(null);
  const [fault, setFault] = useState<Error | null>(null);
  useEffect(() => {
    if (question === null) return undefined;
    const { documents, desk, now, job } = question;
    const asked = askedOf(set, job);
    return search(
      { inCall: documents, now, asked },
      {
        onFound: (found) => {
          const inCall = caseInCall(documents, desk, { now, set });
          setAnswer({ of: question, found: planFound(inCall, asked, found) });
        },
        onFault: setFault,
      },
    );
  }, [set, question]);
  // A screen that could not search must not look like one that found nothing.
  if (fault !== null) throw fault;
  return answer !== null && answer.of === question ? answer.found : null;
};

export const PlanPart = ({ open, desk }: PartProps) => {
  const tell = useTell();
  const { set, id, now } = desk;
  const [question, ask] = useState<Question | null>(null);
  const found = usePlan(id, question);
  const standing = startOf(set);
  const { documents, desk: rules } = open.here;
  // What was worked out from another standing is of no use any more.
  const isOld = question !== null && question.standing !== standing;
  const begin = (job: Job): void => {
    if (documents === null || rules === null || standing === null) return;
    ask({ job, standing, documents, desk: rules, now });
  };
  return (
    <section className="call-form" aria-label={tell('Order of work for set {id}', { id })}>
      <PlanNowWords desk={desk} />
      {documents === null ? (
        <p>{tell('This device has other revisions than the call, so it works nothing out.')}</p>
      ) : null}
      {standing === null ? (
        <p>
          {tell(
            'An order begins from a set that is known, with no leave out on it. Find it first.',
          )}
        </p>
      ) : null}
      <p className="buttons">
        {JOBS.map((job) => (
          <button
            key={job}
            type="button"
            disabled={documents === null || rules === null || standing === null}
            onClick={() => begin(job)}
          >
            {tell(ASK[job])}
          </button>
        ))}
      </p>
      {question !== null && found === null && !isOld ? (
        <p role="status">{tell('Searching for an order …')}</p>
      ) : null}
      {isOld ? (
        <p role="status">{tell('It stands otherwise since: ask for the order again.')}</p>
      ) : null}
      {question === null || found === null || isOld ? null : (
        <Found desk={desk} job={question.job} found={found} />
      )}
    </section>
  );
};

/** What is told now, or that what was told is void because something was done otherwise. */
const PlanNowWords = ({ desk: { set } }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const { plan } = set;
  if (plan === null) {
    return (
      <p>
        {set.since === null || set.since.steps.length === 0
          ? tell('No order is told for it.')
          : tell(
              'Something was done on it and no order stands: what was told is void because it ' +
                'was done otherwise. Work it out again from how it stands now.',
            )}
      </p>
    );
  }
  return (
    <p>
      {plan.done === plan.steps.length
        ? tell('The order told ({job}) is done.', { job: jobWords(plan.job, voice) })
        : tell(
            'The order told ({job}) stands: {done} of {count} steps done. Another replaces it.',
            {
              job: jobWords(plan.job, voice),
              done: plan.done,
              count: plan.steps.length,
            },
          )}
    </p>
  );
};

type FoundProps = {
  readonly desk: SetOnDesk;
  readonly job: Job;
  readonly found: PlanFound;
};

const Found = ({ desk, job, found }: FoundProps) => {
  const tell = useTell();
  const { house } = desk;
  if (found.is === 'none') {
    return (
      <Notice degree="caution" title={tell('no order of work from here')} isNews>
        {sayWhyNoOrder(found.answer, house).map((words) => (
          <p key={words}>{words}</p>
        ))}
      </Notice>
    );
  }
  return <Told desk={desk} job={job} found={found} />;
};

type ToldProps = FoundProps & { readonly found: Extract<PlanFound, { readonly is: 'order' }> };

const Told = ({ desk, job, found: { steps, answer } }: ToldProps) => {
  const tell = useTell();
  const tellCount = useTellCount();
  const voice = useVoice();
  const saying = useSay();
  const { house, id, each, isLive } = desk;
  const context = { house, set: id, nameOf: nameOfPiece(each) };
  const states = 'refusals' in answer ? [] : answer.order.verdict.states;
  const assumed = 'refusals' in answer ? [] : answer.order.assumed;
  return (
    <div className="call-plan" data-planned="">
      <p className="call-planned-word">
        {tell('PLANNED')} {tellCount(steps.length, ['{count} step', '{count} steps'])}
      </p>
      <ol className="call-lines call-steps">
        {steps.map((step, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: steps are told apart by their place
          <li key={index}>{stepWords(step, states[index]?.standing ?? null, context)}</li>
        ))}
      </ol>
      <Restraint answer={answer} />
      <ul className="call-lines">
        {assumed
          .filter(({ is }) => is !== 'asTheOrderWrites')
          .map((assumption) => sayAssumption(assumption, house))
          .map((words) => (
            <li key={words}>{words}</li>
          ))}
      </ul>
      <p className="buttons">
        <button
          type="button"
          disabled={!isLive || saying.isPending}
          onClick={() =>
            saying.say({ kind: 'plan told', set: id, payload: { job, steps: [...steps] } })
          }
        >
          {tell('Tell this order to all posts: {job} of set {id}', {
            job: jobWords(job, voice),
            id,
          })}
        </button>
        <span role="status">{saying.words}</span>
      </p>
    </div>
  );
};

/** What has to be there before the first step, and what carries it. */
const Restraint = ({ answer }: { readonly answer: PlanFound['answer'] }) => {
  const tell = useTell();
  const { house } = useWork();
  if ('refusals' in answer) return null;
  const { plan, order, question } = answer;
  if (!('found' in plan) || plan.found.restraint === null) return null;
  const [needed, wish] = sayPlan(plan, house, question.start.standing);
  return (
    <Notice degree="caution" title={tell('have it ready before the first step')}>
      <p>{needed}</p>
      <p>{wish}</p>
      {order.bearing === null ? null : <p>{sayBearing(order.bearing, house)}</p>}
    </Notice>
  );
};
