/** How the worked orders are written down: a set as it stands, and the steps by their names. */
import { FOOT, metres, newtons, POUND_FORCE } from '#quantities';
import type { RuleCode } from '#rules';
import type { ItemPhase, Restraint, StackRun, Standing, Step, WorkZone } from '#state';
import type { ORDER_PLANT } from '../order-plant.ts';

export type WorkedOrder = {
  readonly scenario: string;
  readonly name: string;
  readonly plant: keyof typeof ORDER_PLANT;
  readonly start: Standing;
  readonly steps: readonly Step[];
  /** The rule that the plan names; null for a right order. */
  readonly refusedBy: RuleCode | null;
  /** State (0 is the start), and its imbalance with nothing borne by a rest. */
  readonly pounds: readonly (readonly [state: number, lb: number])[];
  /** The same with all borne by the rest that can be. */
  readonly poundsLow?: readonly (readonly [state: number, lb: number])[];
};

export const RUN: WorkZone = { zone: 'run' };
export const drop = (gallery: string): WorkZone => ({ zone: 'drop', gallery });

export const standing = (
  heightFt: number,
  pipe: StackRun,
  show: readonly (readonly [kind: string, count: number])[],
  items: Readonly<Record<string, ItemPhase>> = {},
): Standing => ({
  height: metres(heightFt * FOOT),
  stack: [pipe, ...show.map(([kind, count]) => ({ kind, count, tag: 'show' }) as const)],
  items,
  restraints: [],
  service: 'in',
  closed: [],
});

export const SP6: StackRun = { kind: 'O', count: 3, tag: 'pipe' };
export const SP7: StackRun = { kind: 'F', count: 4, tag: 'pipe' };
export const DP7: StackRun = { kind: 'F', count: 10, tag: 'pipe' };

export const close = (zone: WorkZone): Step => ({ act: 'close', zone });
export const fly = (toFt: number): Step => ({ act: 'fly', to: metres(toFt * FOOT) });
export const attach = (item: string): Step => ({ act: 'attach', item, as: 'flying' });
export const release = (item: string): Step => ({ act: 'release', item });

/** Bricks from a gallery, its own drop zone closed and no other: the lower one is empty then. */
const bricks =
  (act: 'add' | 'remove') =>
  (
    gallery: string,
    ...runs: readonly (readonly [count: number, kind: string])[]
  ): readonly Step[] => [
    close(drop(gallery)),
    ...runs.map(([count, kind]): Step => ({ act, kind, count, gallery })),
    { act: 'reopen', zone: drop(gallery) },
  ];

export const add = bricks('add');
export const remove = bricks('remove');

export const restraint = (
  kind: Restraint['kind'],
  ratingLbf: number,
  [fromFt, toFt]: readonly [number, number],
): Restraint => ({
  kind,
  resists: kind === 'deadHangSteel' || kind === 'stands' ? 'in' : 'out',
  rating: newtons(ratingLbf * POUND_FORCE),
  from: metres(fromFt * FOOT),
  to: metres(toFt * FOOT),
  owner: 'deck lead',
  tag: '7',
});
