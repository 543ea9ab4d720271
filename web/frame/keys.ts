/** Every key that does something, by the screen on which it does it. */
import { message } from '#texts';
import type { Place } from '../address/address.ts';

export type KeyWords = readonly [keys: string, what: string];

export type KeyGroup = {
  readonly title: string;
  /** Screens on which these keys work; none is everywhere. */
  readonly on: readonly Place['kind'][];
  readonly keys: readonly KeyWords[];
};

export const KEY_GROUPS: readonly KeyGroup[] = [
  {
    title: message('Everywhere'),
    on: [],
    keys: [
      ['?', message('this list; Escape closes it')],
      [message('Tab, Shift + Tab'), message('to the next control and back; Enter follows a link')],
      [message('Control + Z'), message('takes the last edit back')],
      [message('Control + Y'), message('does again what was taken back')],
      ['Escape', message('leaves a field as it was')],
    ],
  },
  {
    title: message('On the wall'),
    on: [],
    keys: [
      [message('Left, Right'), message('to the set beside it; Home and End to the ends')],
      [message('A number or letter'), message('to the set of that name')],
      ['Enter', message('opens the set')],
    ],
  },
  {
    title: message('Section and plan'),
    on: ['house'],
    keys: [
      [message('Arrows'), message('move the drawing, when it has the focus')],
      ['+, −', message('nearer, farther')],
      ['0', message('all of it again')],
    ],
  },
  {
    title: message('Hang list'),
    on: ['hangList'],
    keys: [
      [message('Arrows, Tab'), message('to the next cell; Home and End to the ends of the row')],
      [message('Control + Home, End'), message('to the first and the last row')],
      [message('Enter or F2'), message('types into the cell; a letter begins it anew')],
      [message('Shift + arrows'), message('chooses several cells; with Control, to the edge')],
      [message('Shift + Space'), message('chooses whole rows')],
      [message('Control + A'), message('chooses all that is shown')],
      [
        message('Control + C, V'),
        message('copies; pastes from the cell in hand, from any spreadsheet'),
      ],
      [message('Control + D'), message('fills the first row chosen down into the others')],
      ['Delete', message('clears heights and depths; leaves whole rows chosen empty')],
      ['/', message('to the field that finds; Enter there goes to the next row found')],
      [message('Enter on a head'), message('sorts by that column; arrows lead up to it')],
      ['F8', message('every set in rail order again')],
    ],
  },
  {
    title: message('Set'),
    on: ['set'],
    keys: [
      [message('Left, Right'), message('to the set beside this one, while nothing has the focus')],
      [
        message('Arrows on a load'),
        message('move it along the pipe to ask what if; with Shift, finely'),
      ],
      [message('Page Up, Page Down'), message('move it further; Home and End to the ends')],
    ],
  },
  {
    title: message('Order'),
    on: ['order'],
    keys: [
      [message('Left, Right'), message('to the step before and behind; Home and End to the ends')],
      ['Escape', message('closes the step that is open')],
    ],
  },
];

/** Those of the screen in view stand first, so that nobody reads through the others. */
export const keyGroupsFor = (screen: Place['kind']): readonly KeyGroup[] => [
  ...KEY_GROUPS.filter(({ on }) => on.includes(screen)),
  ...KEY_GROUPS.filter(({ on }) => on.length === 0),
  ...KEY_GROUPS.filter(({ on }) => on.length > 0 && !on.includes(screen)),
];
