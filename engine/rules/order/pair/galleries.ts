/** The galleries are one house for both sets: one at work at a time (V6), and one stock. */
import { measure } from '#findings';
import type { Step } from '#state';
import { breach } from '../breach.ts';
import type { Breach } from '../verdict.ts';
import { type Moment, sceneOf, setOf, sideOf } from './moment.ts';
import { otherOf, type Side } from './pair-verdict.ts';

type BrickStep = Extract<Step, { readonly act: 'add' | 'remove' }>;

export type Galleries = {
  /** For which set each gallery whose drop zone is closed had bricks in hand last. */
  readonly atWork: ReadonlyMap<string, Side>;
  /** What was given, less what came back, by gallery and kind. */
  readonly given: ReadonlyMap<string, number>;
};

export const QUIET_GALLERIES: Galleries = { atWork: new Map(), given: new Map() };

export type GalleriesAnswer = {
  readonly galleries: Galleries;
  readonly breaches: readonly Breach[];
};

export const atGalleries = (moment: Moment, galleries: Galleries): GalleriesAnswer => {
  const { step } = moment;
  if (step === null || 'together' in step) return { galleries, breaches: [] };
  const own = step.step;
  if (own.act === 'add' || own.act === 'remove') {
    return withBricks(moment, galleries, sideOf(moment, step), own);
  }
  if (own.act !== 'reopen' || own.zone.zone !== 'drop') return { galleries, breaches: [] };
  const atWork = new Map(galleries.atWork);
  atWork.delete(own.zone.gallery);
  return { galleries: { ...galleries, atWork }, breaches: [] };
};

const withBricks = (
  moment: Moment,
  galleries: Galleries,
  side: Side,
  step: BrickStep,
): GalleriesAnswer => {
  const isShut = moment.before[side].closed.some(
    (zone) => zone.zone === 'drop' && zone.gallery === step.gallery,
  );
  const atWork = new Map(galleries.atWork);
  // Bricks over an open zone are a breach of their own; nobody will reopen it.
  if (isShut) atWork.set(step.gallery, side);
  const key = `${step.gallery} ${step.kind}`;
  const wasN = galleries.given.get(key) ?? 0;
  const isN = wasN + (step.act === 'add' ? step.count : -step.count);
  return {
    galleries: { atWork, given: new Map(galleries.given).set(key, isN) },
    breaches: [
      ...elsewhere(moment, galleries, side, step),
      ...stockBreaches(moment, { side, step, wasN }),
    ],
  };
};

const nameOf = ({ pair }: Moment, side: Side, id: string): string =>
  pair[side].physics.galleries.find((gallery) => gallery.id === id)?.name ?? id;

const elsewhere = (
  moment: Moment,
  { atWork }: Galleries,
  side: Side,
  { gallery }: BrickStep,
): readonly Breach[] => {
  const other = [...atWork].find(([id, of]) => id !== gallery && of === otherOf(side));
  if (other === undefined) return [];
  return [
    breach(sceneOf(moment, side, moment.before), {
      rule: 'ORD-044',
      gallery,
      facts: {
        gallery: nameOf(moment, side, gallery),
        other: nameOf(moment, side, other[0]),
        partner: setOf(moment, otherOf(side)),
      },
    }),
  ];
};

type Taking = { readonly side: Side; readonly step: BrickStep; readonly wasN: number };

/** What one set would find, the other may have taken. */
const stockBreaches = (moment: Moment, { side, step, wasN }: Taking): readonly Breach[] => {
  const { galleries } = moment.pair[side].physics;
  const all = galleries.find(({ id }) => id === step.gallery)?.stock[step.kind] ?? 0;
  const have = all - wasN;
  if (step.act === 'remove' || step.count <= have || step.count > all) return [];
  return [
    breach(sceneOf(moment, side, moment.before), {
      rule: 'ORD-015',
      gallery: step.gallery,
      measured: measure(step.count, 'count'),
      limit: measure(have, 'count'),
      facts: { kind: step.kind, gallery: nameOf(moment, side, step.gallery) },
    }),
  ];
};
