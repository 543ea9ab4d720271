/** What the instructor chooses: set, work, the post that learns, and a fault nobody is told. */
import { useId, useState } from 'react';
import { type DrillFault, drillStart, faultsOf, postsOf } from '#call';
import type { CheckedOrder } from '#orders';
import type { PostId } from '#state';
import { postWords } from '../call-desk/desk-words.ts';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
import { useOrder } from '../order/use-order.ts';
import { useWork } from '../reckoning/use-work.ts';
import { faultWords, stepTitles } from './drill-words.ts';
import type { Begun } from './use-drill.ts';

export type Job = 'load' | 'strike';

const Choice = ({
  name,
  value,
  choices,
  onChoose,
}: {
  readonly name: string;
  readonly value: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
  readonly onChoose: (value: string) => void;
}) => {
  const id = useId();
  return (
    <p className="drill-choice">
      <label htmlFor={id}>{name}</label>
      <select id={id} value={value} onChange={({ target }) => onChoose(target.value)}>
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </p>
  );
};

type Chosen = { readonly set: string; readonly job: Job };

/** Sets that move by themselves: two coupled ones are worked by a crew of their own. */
const useSets = (): readonly (readonly [string, string])[] => {
  const { sets } = useWork();
  const tell = useTell();
  return sets
    .filter(({ set }) => set.lineSet.arbor !== null && set.hang?.coupledWith.length === 0)
    .map(({ id, set }) => [id, tell('{id} {name}', { id, name: set.hang?.name ?? '' })] as const);
};

const CHANCE = 'chance';
const NONE = 'none';

type OrderProps = Chosen & {
  readonly order: CheckedOrder;
  readonly onBegin: (begun: Omit<Begun, 'start'>) => void;
};

/** By chance: neither the instructor nor who learns knows it. */
const faultOf = (chosen: string, faults: readonly DrillFault[]): DrillFault | null => {
  if (chosen === NONE) return null;
  const at = chosen === CHANCE ? Math.floor(Math.random() * faults.length) : Number(chosen);
  return faults[at] ?? null;
};

const WithOrder = ({ set, order, onBegin }: OrderProps) => {
  const tell = useTell();
  const { house, sets } = useWork();
  const [post, setPost] = useState<PostId>('headFly');
  const [chosen, setChosen] = useState(CHANCE);
  const takeoffs = sets.find(({ id }) => id === set)?.set.takeoffs ?? [];
  const nameOf = (id: string): string =>
    takeoffs.find(({ item }) => item.id === id)?.item.name ?? id;
  const titles = stepTitles(order, house, nameOf);
  const posts = postsOf(order.steps);
  const trainee = posts.includes(post) ? post : 'headFly';
  const faults = faultsOf(order.steps);
  const { bricks } = order.physics;
  const begin = (fault: DrillFault | null): void =>
    onBegin({ trainee, fault, titles, nameOf, bricks });
  return (
    <>
      <Choice
        name={tell('Who learns is at the post')}
        value={trainee}
        choices={posts.map((each) => [each, postWords(each, house)] as const)}
        onChoose={setPost}
      />
      <Choice
        name={tell('Fault that is planted')}
        value={chosen === CHANCE || chosen === NONE || faults[Number(chosen)] ? chosen : CHANCE}
        choices={[
          [CHANCE, tell('One by chance')],
          [NONE, tell('None: all goes as told')],
          ...faults.map((fault, at) => [String(at), faultWords(fault, titles, house)] as const),
        ]}
        onChoose={setChosen}
      />
      <p className="quiet">
        {tell('The fault is not shown again before the end. Give the device to who learns then.')}
      </p>
      <p>
        <button
          type="button"
          className="button primary drill-next"
          onClick={() => begin(faultOf(chosen, faults))}
        >
          {tell('Begin the drill')}
        </button>
      </p>
    </>
  );
};

export const DrillSetup = ({ onBegin }: { readonly onBegin: (begun: Begun) => void }) => {
  const tell = useTell();
  const sets = useSets();
  const { house, show, state } = useWork();
  const [{ set, job }, choose] = useState<Chosen>({ set: sets[0]?.[0] ?? '', job: 'load' });
  const answer = useOrder({ set, job, from: job === 'load' ? 'bare' : 'planned' });
  const worked = answer !== null && 'order' in answer ? answer : null;
  const start =
    worked === null || state === null
      ? null
      : drillStart({ house, show, state }, worked, new Date().toISOString());
  return (
    <div className="drill-setup">
      <Choice
        name={tell('Set')}
        value={set}
        choices={sets}
        onChoose={(each) => choose({ set: each, job })}
      />
      <Choice
        name={tell('Work')}
        value={job}
        choices={[
          ['load', tell('Load it')],
          ['strike', tell('Strike it')],
        ]}
        onChoose={(each) => choose({ set, job: each === 'strike' ? 'strike' : 'load' })}
      />
      {answer === null ? <p className="quiet">{tell('Finding its order of work …')}</p> : null}
      {answer !== null && start === null ? (
        <Notice degree="caution" title={tell('no order that could be worked by')}>
          <p>{tell('There is nothing to practise on this set. Its order screen says why.')}</p>
        </Notice>
      ) : null}
      {start === null || worked === null ? null : (
        <WithOrder
          key={`${set} ${job}`}
          set={set}
          job={job}
          order={worked.order}
          onBegin={(begun) => onBegin({ ...begun, start })}
        />
      )}
    </div>
  );
};
