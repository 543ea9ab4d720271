/** What the rules of a call are given: the house as it stands now, the step, and what is known. */
import type { Finding } from '#findings';
import type { House } from '#house';
import type { Hang } from '#show';
import type { HouseNow, OrderPhysics, PostId, SetNow, Step, WorkZone } from '#state';
import type { CallFinding } from './finding.ts';

export type CallAsked = { readonly set: string; readonly post: PostId; readonly step: Step };

export type CallFacts = {
  readonly house: House;
  /** What the show hangs on the set. */
  readonly hang: Hang | null;
  /** With the bricks that lie loose now; null where a value is not known, and `needs` names it. */
  readonly physics: OrderPhysics | null;
  readonly needs: readonly string[];
  /** What the other rules stop in the plan of this set. */
  readonly planStops: readonly Finding[];
  readonly nowMs: number;
};

export type CallCase = {
  readonly now: HouseNow;
  readonly asked: CallAsked;
  readonly set: SetNow;
  readonly facts: CallFacts;
};

export type CallRule = (the: CallCase) => readonly CallFinding[];

export type BrickWork = Extract<Step, { readonly act: 'add' | 'remove' }>;

export const isBricks = (step: Step): step is BrickWork =>
  step.act === 'add' || step.act === 'remove';

export const isMove = ({ act }: Step): boolean => act === 'fly' || act === 'ease';

export const isZoneWork = (
  step: Step,
): step is Extract<Step, { readonly act: 'close' | 'reopen' }> =>
  step.act === 'close' || step.act === 'reopen';

export const isSameZone = (one: WorkZone, other: WorkZone): boolean =>
  one.zone === 'run' || other.zone === 'run'
    ? one.zone === other.zone
    : one.gallery === other.gallery;

export const marshalOf = (zone: WorkZone): PostId =>
  zone.zone === 'run' ? 'marshal:run' : `marshal:drop:${zone.gallery}`;

export const galleryName = ({ galleries }: Pick<House, 'galleries'>, id: string): string =>
  galleries.find((each) => each.id === id)?.name ?? id;

/** Leave that is open on other sets, with the set it is on. */
export const leavesElsewhere = (
  { sets }: HouseNow,
  set: string,
): readonly { readonly set: string; readonly step: Step }[] =>
  Object.entries(sets).flatMap(([id, { leave }]) =>
    id === set || leave === null ? [] : [{ set: id, step: leave.step }],
  );
