/** What stands beside each box of a step that is filled in by hand, and what it offers. */
import { type OrderMoment, tradeWord } from '#drawings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { inHouseWords } from '#sheets';
import { RESTRAINT_KINDS } from '#state';
import {
  ATTACH_AS,
  DRAFT_ACTS,
  type Draft,
  type DraftAct,
  type DraftField,
  RESISTS,
} from './draft-step.ts';
import { nameOfItem } from './moments.ts';

const actWords = (act: DraftAct, house: House): string => {
  const words: Readonly<Record<DraftAct, string>> = {
    close: 'close a zone',
    reopen: 'reopen a zone',
    remove: `take ${tradeWord(house, 'bricks')} off`,
    add: `put ${tradeWord(house, 'bricks')} on`,
    fly: 'fly to a height',
    attach: 'tie a piece on',
    release: 'untie a piece',
    rest: 'rest a piece',
    takeUp: 'take a piece up',
    rig: 'rig a restraint',
    unrig: 'take a restraint off',
  };
  return words[act];
};

const AS_WORDS: Readonly<Record<Draft['as'], string>> = {
  flying: 'hanging',
  attachedResting: 'on its rest, picks tight',
  attachedSlack: 'lying, picks slack',
};

const RESTRAINT_WORDS: Readonly<Record<Draft['restraint'], string>> = {
  bullLine: 'bull line',
  arborSling: 'sling on the arbor',
  stands: 'stands under the batten',
  winch: 'winch on the hand line',
  choke: 'choke on the hand line',
  deadHangSteel: 'steel to hang the set on',
  pinnedPiece: 'pin that ties the piece down',
};

const RESISTS_WORDS: Readonly<Record<Draft['resists'], string>> = {
  out: 'against going out',
  in: 'against coming in',
  both: 'both ways',
};

export type Option = readonly [value: string, words: string];

/** Where a field has nothing to choose from, the form says so instead of an empty list. */
export type FieldView =
  | { readonly is: 'choice'; readonly label: string; readonly options: readonly Option[] }
  | { readonly is: 'typed'; readonly label: string; readonly example: string };

const lengthExample = ({ units }: House): string => (units === 'customary' ? '24 ft' : '7.3 m');
const forceExample = ({ units }: House): string => (units === 'customary' ? '55 lbf' : '250 N');

const TYPED_LABELS = {
  count: 'how many',
  to: 'to',
  rating: 'rated',
  rigFrom: 'from',
  rigTo: 'to',
} as const satisfies Partial<Record<DraftField, string>>;

const CHOICE_LABELS = {
  act: 'the step',
  zone: 'zone',
  kind: 'of which kind',
  gallery: 'at the gallery',
  item: 'piece',
  as: 'how',
  restraint: 'restraint',
  resists: 'it holds',
  rigged: 'which',
} as const satisfies Partial<Record<DraftField, string>>;

type ChoiceField = keyof typeof CHOICE_LABELS;

const optionsOf = (
  field: ChoiceField,
  { set, physics, state }: OrderMoment,
  house: House,
): readonly Option[] => {
  const galleries = physics.galleries.map(({ id, name }): Option => [id, name]);
  const restraintWords = (kind: Draft['restraint']) => inHouseWords(RESTRAINT_WORDS[kind], house);
  switch (field) {
    case 'act':
      return DRAFT_ACTS.map((act) => [act, actWords(act, house)]);
    case 'zone':
      return [
        ['run', 'its run'],
        ...galleries.map(([id, name]): Option => [id, `drop zone of the ${name}`]),
      ];
    case 'kind':
      return physics.bricks.map(({ id }) => [
        id,
        house.brickKinds.find((kind) => kind.id === id)?.name ?? id,
      ]);
    case 'gallery':
      return galleries;
    case 'item':
      return set.takeoffs.map(({ item }) => [item.id, nameOfItem(set)(item.id)]);
    case 'as':
      return ATTACH_AS.map((as) => [as, AS_WORDS[as]]);
    case 'restraint':
      return RESTRAINT_KINDS.map((kind) => [kind, restraintWords(kind)]);
    case 'resists':
      return RESISTS.map((way) => [way, RESISTS_WORDS[way]]);
    case 'rigged':
      return state.standing.restraints.map(({ kind, resists }, index) => [
        `${index}`,
        `${restraintWords(kind)} ${RESISTS_WORDS[resists]}`,
      ]);
    default:
      return unreachable(field);
  }
};

export const viewOf = (field: DraftField, drawn: OrderMoment, house: House): FieldView => {
  switch (field) {
    case 'count':
      return { is: 'typed', label: TYPED_LABELS[field], example: '1' };
    case 'rating':
      return { is: 'typed', label: TYPED_LABELS[field], example: forceExample(house) };
    case 'to':
    case 'rigFrom':
    case 'rigTo':
      return { is: 'typed', label: TYPED_LABELS[field], example: lengthExample(house) };
    case 'act':
    case 'zone':
    case 'kind':
    case 'gallery':
    case 'item':
    case 'as':
    case 'restraint':
    case 'resists':
    case 'rigged':
      return { is: 'choice', label: CHOICE_LABELS[field], options: optionsOf(field, drawn, house) };
    default:
      return unreachable(field);
  }
};

/** What each act asks for, in the order in which it is said. */
export const FIELDS: Readonly<Record<DraftAct, readonly DraftField[]>> = {
  close: ['zone'],
  reopen: ['zone'],
  add: ['count', 'kind', 'gallery'],
  remove: ['count', 'kind', 'gallery'],
  fly: ['to'],
  attach: ['item', 'as'],
  release: ['item'],
  rest: ['item'],
  takeUp: ['item'],
  rig: ['restraint', 'resists', 'rating', 'rigFrom', 'rigTo'],
  unrig: ['rigged'],
};
