/** What if? One hang changed in a question beside the plan, until a person makes it the plan. */
import { useMemo, useState } from 'react';
import type { Finding } from '#findings';
import type { Refusal } from '#outcome';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { hangPath, writtenHang } from '../editing/show-edits.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { isSame, type JsonObject, withAt } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { EditingContext, useEditing, useSet, useWork, WorkContext } from '../reckoning/use-work.ts';
import { ChecksApart, DrawnApart, FiguresApart, noPlanWords } from './apart-view.tsx';
import { ChangeHere } from './change-here.tsx';
import { findingsApart } from './findings-apart.ts';
import { changeSentences } from './say-change.ts';
import type { Side } from './side-rows.ts';
import { type Question, type Questioned, useQuestion } from './use-question.ts';

type Props = { readonly id: string; readonly change: string | null };

export const WhatIfPage = ({ id, change }: Props) => {
  const tell = useTell();
  const each = useSet(id);
  if (each === undefined || each.set.hang === null) {
    const why =
      each === undefined
        ? tell('this house has no set {id}', { id })
        : tell('nothing hangs on set {id}', { id });
    return (
      <Notice degree="caution" title={why}>
        <p>
          {tell('Ask of a set that hangs something, or look for a set for a piece:')}{' '}
          <Link to={{ kind: 'whichSet', piece: null }}>{tell('Which set?')}</Link>
        </p>
      </Notice>
    );
  }
  return <OneQuestion each={each} change={change} />;
};

type OneProps = { readonly each: SetReckoning; readonly change: string | null };

const OneQuestion = ({ each, change }: OneProps) => {
  const tell = useTell();
  const { id } = each;
  const question = useQuestion(id, change);
  const { answer, editing, putBack } = question;
  const plan = useWork();
  const planEditing = useEditing();
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const make = (asked: JsonObject): void => {
    const hang = writtenHang(asked, id);
    const found = planEditing.change({
      write: (show) => withAt(show, hangPath(show, id) ?? [], hang ?? undefined) as JsonObject,
      what: `what if on set ${id} made the plan`,
    });
    setRefusals(found);
    if (found.length === 0) go({ kind: 'set', set: id });
  };
  return (
    <>
      <div className="page-head">
        <h1>{tell('What if: set {id}, {name}', { id, name: each.set.hang?.name ?? '' })}</h1>
        <p className="quiet">
          {tell(
            'Nothing of this is kept until you make it the plan. The address holds the question: ' +
              'send it, and it opens again.',
          )}{' '}
          <Link to={{ kind: 'set', set: id }}>{tell('Back to set {id}', { id })}</Link>
        </p>
      </div>
      {answer.is === 'asked' ? (
        <WorkContext value={answer.work}>
          <EditingContext value={editing}>
            <Asked
              plan={each}
              before={plan.findings}
              question={question}
              answer={answer}
              onMake={make}
            />
            {refusals.length === 0 ? null : (
              <Notice degree="caution" title={tell('not taken, nothing changed')} isNews>
                <Refusals refusals={refusals} />
              </Notice>
            )}
          </EditingContext>
        </WorkContext>
      ) : (
        <Unread answer={answer} putBack={putBack} />
      )}
      <TitleBlock
        drawing={tell('Set {id}, what if', { id })}
        scale={tell('one height for all drawings')}
      />
    </>
  );
};

type UnreadProps = {
  readonly answer: Exclude<Questioned, { readonly is: 'asked' }>;
  readonly putBack: () => void;
};

const Unread = ({ answer, putBack }: UnreadProps) => {
  const tell = useTell();
  return (
    <Notice degree="caution" title={tell('this question does not fit the plan as it stands now')}>
      {answer.is === 'refused' ? (
        <Refusals refusals={answer.refusals} />
      ) : (
        <p>
          {tell('The hang has changed since the address was written, or the address is not whole.')}
        </p>
      )}
      <p className="buttons">
        <button type="button" onClick={putBack}>
          {tell('Begin from the plan')}
        </button>
      </p>
    </Notice>
  );
};

type AskedProps = {
  readonly plan: SetReckoning;
  readonly before: readonly Finding[];
  readonly onMake: (asked: JsonObject) => void;
  readonly question: Question;
  readonly answer: Extract<Questioned, { readonly is: 'asked' }>;
};

const Asked = ({ plan, before, question, answer, onMake }: AskedProps) => {
  const tell = useTell();
  const labels = { one: tell('as planned'), other: tell('what if') };
  const { house } = answer.work;
  const asked = useSet(plan.id) ?? plan;
  const one = useMemo((): Side => ({ set: plan.set, house }), [plan, house]);
  const other = useMemo((): Side => ({ set: asked.set, house }), [asked, house]);
  const changes = useMemo(
    () => findingsApart(before, answer.work.findings),
    [before, answer.work.findings],
  );
  const isChanged = !isSame(plan.written ?? undefined, asked.written ?? undefined);
  const missing = noPlanWords(other);
  const name = asked.set.hang?.name ?? tell('empty');
  return (
    <PlannedFrame
      word="WHAT IF"
      title={tell('Set {id}, {name}', { id: plan.id, name })}
      note={tell(
        'A question, by the same engine and rules as the plan. Not recorded, not for work.',
      )}
    >
      <div className="what-if-sum" role="status">
        {isChanged ? (
          <ul>
            {[...(missing === null ? [] : [missing]), ...changeSentences(one, other, changes)].map(
              (sentence) => (
                <li key={sentence}>{sentence}</li>
              ),
            )}
          </ul>
        ) : (
          <p>
            {tell(
              'Nothing is changed yet: this is the plan. Change a mass, a height, a place or the ' +
                'bricks below.',
            )}
          </p>
        )}
      </div>
      <p className="buttons">
        <button type="button" disabled={!isChanged} onClick={() => onMake(answer.show)}>
          {tell('Make this the plan')}
        </button>
        <button type="button" disabled={!isChanged} onClick={question.putBack}>
          {tell('Put it back')}
        </button>
        <span className="quiet">
          {question.isUnaddressed
            ? tell('More is changed than an address can hold: it is lost when this page is left.')
            : tell('One edit of the show, which undo takes back.')}
        </span>
      </p>
      <ChangeHere each={asked} />
      <DrawnApart one={one} other={other} labels={labels} />
      <FiguresApart one={one} other={other} labels={labels} reader={house} />
      <ChecksApart before={before} after={answer.work.findings} house={house} id="what-if-checks" />
    </PlannedFrame>
  );
};
