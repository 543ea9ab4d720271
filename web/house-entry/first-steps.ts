/**
 * What a blank house enters first to get a balance card. Each step is done when the documents and
 * the engine say so; nothing is counted here.
 */
import { message } from '#texts';
import type { Place } from '../address/address.ts';
import { isObject } from '../keeping/json.ts';
import type { Reckoning } from '../reckoning/reckon.ts';
import { fieldName } from './entry-path.ts';

export type FirstStep = {
  readonly words: string;
  readonly isDone: boolean;
  /** What the engine still asks for, where it has begun. */
  readonly needs: readonly string[];
  readonly to: Place;
};

const form = (inside: string, field?: string): Place => ({
  kind: 'house',
  part: 'enter',
  at: null,
  inside,
  ...(field === undefined ? {} : { field }),
});

type Work = Pick<Reckoning, 'house' | 'documents' | 'sets'>;

/** The kind whose sets could be balanced first, where one is entered. */
const firstKind = ({ documents }: Work): string | undefined => {
  const kinds = documents.house['setTypes'];
  return isObject(kinds) ? Object.keys(kinds)[0] : undefined;
};

const kindSteps = (work: Work): readonly FirstStep[] => {
  const kind = firstKind(work);
  const first = work.sets.find(({ set }) => set.lineSet.arbor !== null) ?? work.sets[0];
  const bare = first?.set.bare;
  const isBare = work.sets.some(({ set }) => set.bare.known);
  return [
    {
      words: message('A kind of set: how it is carried'),
      isDone: kind !== undefined,
      needs: [],
      to: form('kinds'),
    },
    {
      words: message('Line sets: their numbers and places, by "add sets"'),
      isDone: work.house.lineSets.some(({ y }) => y.known),
      needs: [],
      to: form('sets'),
    },
    {
      words: message('Of the kind of set: its lines, batten, stops and arbor'),
      isDone: isBare,
      needs: bare === undefined || bare.known || isBare ? [] : bare.needs,
      to: form('kinds', kind === undefined ? undefined : fieldName(['setTypes', kind])),
    },
  ];
};

const hangSteps = ({ sets }: Work): readonly FirstStep[] => {
  const hung = sets.filter(({ set }) => set.hang !== null);
  const [first] = hung;
  const withTrim = hung.find(({ set }) => set.hang?.trims.some(({ height }) => height.known));
  const planned = hung.find(({ set }) => set.plan.known);
  const plan = first?.set.plan;
  return [
    {
      words: message(
        'A first piece on the hang list: its mass, its height, and the length of its picks',
      ),
      isDone: hung.some(({ set }) => (set.hang?.items.length ?? 0) > 0),
      needs: [],
      to: { kind: 'hangList' },
    },
    {
      words: message('Its trims'),
      isDone: withTrim !== undefined,
      needs: [],
      to: { kind: 'hangList' },
    },
    {
      words: message('Its bricks, chosen by the program or by a person'),
      isDone: planned !== undefined,
      needs: plan === undefined || plan.known || planned !== undefined ? [] : plan.needs,
      to: first === undefined ? { kind: 'hangList' } : { kind: 'set', set: first.id },
    },
    {
      words: message('Its balance card, to be printed'),
      isDone: planned !== undefined,
      needs: [],
      to: {
        kind: 'sheets',
        sheet: `balance-card/${planned?.id ?? first?.id ?? ''}`,
      },
    },
  ];
};

export const firstSteps = (work: Work): readonly FirstStep[] => {
  const { house } = work;
  const brick = house.brickKinds.find(
    ({ mass, thickness, owned }) => mass.known && thickness.known && owned.known,
  );
  return [
    {
      words: message('The limit of the rope lock, by the rules of the house'),
      isDone: house.rules.lockLimit.known,
      needs: [],
      to: form('rules', 'rules.lockLimit'),
    },
    {
      words: message('A kind of brick: mass and thickness of one, and how many the house owns'),
      isDone: brick !== undefined,
      needs: [],
      to: form('bricks', house.brickKinds[0] && fieldName(['brickKinds', house.brickKinds[0].id])),
    },
    ...kindSteps(work),
    ...hangSteps(work),
  ];
};
