/** How a set stands by the record of the call, in words: what is known comes with who and when. */
import { platesWords, restraintWords, sayMeasure, zoneName } from '#sheets';
import type { ItemPhase } from '#state';
import { message, told } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import {
  actorWords,
  knowledgeWords,
  momentWords,
  platesCounted,
  postWords,
  rulesWords,
  ruleWords,
  stepWords,
  titleWordsOf,
  workWord,
} from './desk-words.ts';
import { nameOfPiece, type SetOnDesk } from './set-on-desk.ts';
import { useNow } from './use-now.ts';

const PHASES: Readonly<Record<ItemPhase, string>> = {
  away: message('{piece}: not here'),
  beside: message('{piece}: beside the set'),
  attachedSlack: message('{piece}: attached, slack'),
  attachedResting: message('{piece}: attached, resting'),
  flying: message('{piece}: hangs in the air'),
  heldElsewhere: message('{piece}: held by something else'),
};

/** What a person reads first: that nothing holds it, that nobody knows, or neither. */
export const SetWarnings = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const { set } = desk;
  return (
    <>
      {set.held !== 'unheld' || set.standing === null ? null : (
        <Notice degree="danger" title={tell('NOT HELD')}>
          <p>
            {tell(
              'Nothing rated holds it in a direction in which it could move. Only steps after ' +
                'which it is held get leave. Keep everybody clear.',
            )}
          </p>
          {set.rule === null ? null : <p>{ruleWords(set.rule, voice)}</p>}
        </Notice>
      )}
      {set.standing !== null ? null : (
        <Notice degree="caution" title={tell('UNKNOWN')}>
          <p>{tell('{doubt}.', { doubt: told(voice, set.doubt ?? '') })}</p>
          <p>
            {tell('Only finding it again, closing zones and measuring go on. Nothing moves it.')}
          </p>
        </Notice>
      )}
      {set.lockDoubt === null ? null : (
        <Notice degree="caution" title={tell('rope lock in doubt')}>
          <p>{set.lockDoubt}</p>
        </Notice>
      )}
      {set.tag === null ? null : (
        <Notice degree="caution" title={tell('tag {number}', { number: set.tag.number })}>
          <p>{set.tag.reason}</p>
        </Notice>
      )}
      <Overrides desk={desk} />
    </>
  );
};

/** It stays in sight: a rule was set aside here by two people, and this is why. */
const Overrides = ({ desk: { set, now, names } }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  return set.overrides.map(({ seq, why, rules, first, second }) => (
    <Notice
      key={seq}
      degree="caution"
      title={tell('rule set aside: {rules}', { rules: rulesWords(rules, voice) })}
    >
      <p>
        {tell('By {first} and {second}: {why}', {
          first: actorWords(first, now, { names, voice }),
          second:
            second.is === 'paper'
              ? tell('{name}, on paper', { name: second.name })
              : actorWords(second, now, { names, voice }),
          why,
        })}
      </p>
    </Notice>
  ));
};

const Fact = ({ head, words }: { readonly head: string; readonly words: string }) => (
  <div>
    <dt>{head}</dt>
    <dd>{words}</dd>
  </div>
);

export const SetStanding = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const { set } = desk;
  return (
    <section className="call-part" aria-labelledby="set-stands">
      <h2 id="set-stands">
        {set.standing === null ? tell('What was known last, not true now') : tell('How it stands')}
      </h2>
      {set.standing === null && set.last === null ? (
        <p>{tell('Nobody has recorded anything of it in this house.')}</p>
      ) : (
        <StandingFacts desk={desk} />
      )}
    </section>
  );
};

const StandingFacts = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const nowMs = useNow();
  const { set, house, each, names, id } = desk;
  const standing = set.standing ?? set.last;
  if (standing === null) return null;
  const nameOf = nameOfPiece(each);
  const hung = Object.entries(standing.items).map(([piece, phase]) =>
    tell(PHASES[phase], { piece: nameOf(piece) }),
  );
  const zones = standing.closed.map((zone) =>
    zoneName(zone, titleWordsOf({ house, set: id, nameOf })),
  );
  return (
    <dl className="call-facts" data-old={set.standing === null ? '' : undefined}>
      <Fact head={tell('known')} words={knowledgeWords(set.knowledge, nowMs, { names, voice })} />
      <Fact
        head={tell('batten at')}
        words={sayMeasure({ value: standing.height, kind: 'length' }, house)}
      />
      <Fact head={tell('on the arbor')} words={platesWords(standing, house)} />
      <Fact
        head={tell('what hangs')}
        words={hung.length === 0 ? tell('nothing') : hung.join('; ')}
      />
      <Fact
        head={tell('held besides its lock by')}
        words={
          standing.restraints.length === 0
            ? tell('nothing else')
            : standing.restraints.map((each_) => restraintWords(each_, house)).join('; ')
        }
      />
      <Fact head={tell('lock and ring')} words={lockWords(desk, tell)} />
      <Fact
        head={tell('zones closed')}
        words={zones.length === 0 ? tell('none') : zones.join('; ')}
      />
    </dl>
  );
};

const lockWords = (
  { set: { lock, ring, collar } }: SetOnDesk,
  tell: ReturnType<typeof useTell>,
): string =>
  [
    lock === 'closed' ? tell('lock closed') : tell('lock OPEN'),
    ring === 'on' ? tell('ring on') : tell('ring OFF'),
    collar === 'secured' ? tell('collar secured') : tell('collar LOOSE'),
  ].join(', ');

/** What is under way: step n of m, who has leave, who waits for whom. */
export const SetWork = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const { set, house, id, each } = desk;
  const word = workWord(set, voice);
  if (word === null) return null;
  const { plan } = set;
  const context = { house, set: id, nameOf: nameOfPiece(each) };
  const next = plan?.steps[plan.done];
  return (
    <div className="call-work">
      <p className="call-work-word">{word}</p>
      {plan === null ? null : (
        <p>
          {plan.done === plan.steps.length
            ? tell('The order is done, {count} steps.', { count: plan.steps.length })
            : tell('Step {number} of {count}: {step}', {
                number: plan.done + 1,
                count: plan.steps.length,
                step: next === undefined ? '' : stepWords(next, set.standing, context),
              })}
        </p>
      )}
      <WhoWorks desk={desk} />
    </div>
  );
};

const WhoWorks = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const voice = useVoice();
  const nowMs = useNow();
  const { set, now, names, house, id, each } = desk;
  const { asked, leave } = set;
  const context = { house, set: id, nameOf: nameOfPiece(each) };
  return (
    <>
      {asked === null || asked.secondOf === '' ? null : (
        <p>
          {tell('It waits for the word of: {post}', { post: postWords(asked.secondOf, house) })}
        </p>
      )}
      {asked === null ? null : (
        <p>
          {tell('{name} asked {moment}: {step}', {
            name: actorWords(asked, now, { names, voice }),
            moment: momentWords(asked.atMs, nowMs, voice),
            step: stepWords(asked.step, set.standing, context),
          })}
        </p>
      )}
      {leave === null ? null : (
        <p>
          {tell('{name} has leave since {moment}: {step}', {
            name: actorWords(leave, now, { names, voice }),
            moment: momentWords(leave.atMs, nowMs, voice),
            step: stepWords(leave.step, leave.before, context),
          })}
          {leave.step.act === 'add' || leave.step.act === 'remove'
            ? `. ${tell('Counted aloud so far: {plates}', {
                plates: platesCounted(leave.plates, voice),
              })}`
            : ''}
        </p>
      )}
    </>
  );
};
