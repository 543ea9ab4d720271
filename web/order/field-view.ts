/** What stands beside each box of a step that is filled in by hand, and what it offers. */
import type { OrderMoment } from '#drawings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { RESTRAINT_KINDS } from '#state';
import { message, phrase } from '#texts';
import {
  ATTACH_AS,
  DRAFT_ACTS,
  type Draft,
  type DraftAct,
  type DraftField,
  RESISTS,
} from './draft-step.ts';
import { nameOfItem } from './moments.ts';

const ACT_WORDS: Readonly<Record<DraftAct, string>> = {
  close: message('close a zone'),
  reopen: message('reopen a zone'),
  remove: message('take bricks off'),
  add: message('put bricks on'),
  fly: message('fly to a height'),
  attach: message('tie a piece on'),
  release: message('untie a piece'),
  rest: message('rest a piece'),
  takeUp: message('take a piece up'),
  rig: message('rig a restraint'),
  unrig: message('take a restraint off'),
};

const AS_WORDS: Readonly<Record<Draft['as'], string>> = {
  flying: message('hanging'),
  attachedResting: message('on its rest, picks tight'),
  attachedSlack: message('lying, picks slack'),
};

const RESTRAINT_WORDS: Readonly<Record<Draft['restraint'], string>> = {
  bullLine: message('bull line'),
  arborSling: message('sling on the arbor'),
  stands: message('stands under the batten'),
  winch: message('winch on the hand line'),
  choke: message('choke on the hand line'),
  deadHangSteel: message('steel to hang the set on'),
  pinnedPiece: message('pin that ties the piece down'),
};

const RESISTS_WORDS: Readonly<Record<Draft['resists'], string>> = {
  out: message('against going out'),
  in: message('against coming in'),
  both: message('both ways'),
};

export type Option = readonly [value: string, words: string];

/** Where a field has nothing to choose from, the form says so instead of an empty list. */
export type FieldView =
  | { readonly is: 'choice'; readonly label: string; readonly options: readonly Option[] }
  | { readonly is: 'typed'; readonly label: string; readonly example: string };

const lengthExample = (house: House): string =>
  house.units === 'customary' ? '24 ft' : `7${decimalMarkOf(house)}3 m`;
const forceExample = ({ units }: House): string => (units === 'customary' ? '55 lbf' : '250 N');

const TYPED_LABELS = {
  count: message('how many'),
  to: message('to'),
  rating: message('rated'),
  rigFrom: message('from'),
  rigTo: message('to'),
} as const satisfies Partial<Record<DraftField, string>>;

const CHOICE_LABELS = {
  act: message('the step'),
  zone: message('zone'),
  kind: message('of which kind'),
  gallery: message('at the gallery'),
  item: message('piece'),
  as: message('how'),
  restraint: message('restraint'),
  resists: message('it holds'),
  rigged: message('which'),
} as const satisfies Partial<Record<DraftField, string>>;

type ChoiceField = keyof typeof CHOICE_LABELS;

const optionsOf = (
  field: ChoiceField,
  { set, physics, state }: OrderMoment,
  house: House,
): readonly Option[] => {
  const galleries = physics.galleries.map(({ id, name }): Option => [id, name]);
  const restraintWords = (kind: Draft['restraint']) => phrase(house, RESTRAINT_WORDS[kind]);
  switch (field) {
    case 'act':
      return DRAFT_ACTS.map((act) => [act, phrase(house, ACT_WORDS[act])]);
    case 'zone':
      return [
        ['run', phrase(house, 'its run')],
        ...galleries.map(
          ([id, name]): Option => [id, phrase(house, 'drop zone of the {name}', { name })],
        ),
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
      return ATTACH_AS.map((as) => [as, phrase(house, AS_WORDS[as])]);
    case 'restraint':
      return RESTRAINT_KINDS.map((kind) => [kind, restraintWords(kind)]);
    case 'resists':
      return RESISTS.map((way) => [way, phrase(house, RESISTS_WORDS[way])]);
    case 'rigged':
      return state.standing.restraints.map(({ kind, resists }, index) => [
        `${index}`,
        `${restraintWords(kind)} ${phrase(house, RESISTS_WORDS[resists])}`,
      ]);
    default:
      return unreachable(field);
  }
};

export const viewOf = (field: DraftField, drawn: OrderMoment, house: House): FieldView => {
  const typed = (words: string, example: string): FieldView => ({
    is: 'typed',
    label: phrase(house, words),
    example,
  });
  switch (field) {
    case 'count':
      return typed(TYPED_LABELS[field], '1');
    case 'rating':
      return typed(TYPED_LABELS[field], forceExample(house));
    case 'to':
    case 'rigFrom':
    case 'rigTo':
      return typed(TYPED_LABELS[field], lengthExample(house));
    case 'act':
    case 'zone':
    case 'kind':
    case 'gallery':
    case 'item':
    case 'as':
    case 'restraint':
    case 'resists':
    case 'rigged':
      return {
        is: 'choice',
        label: phrase(house, CHOICE_LABELS[field]),
        options: optionsOf(field, drawn, house),
      };
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
