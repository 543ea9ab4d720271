/** Bricks on and off, plate by plate: the reach moves with the stack, and so does the balance. */
import { measure } from '#findings';
import type { OrderGallery, StackRun, Standing, Step } from '#state';
import { isAbove, isBelow } from '../limits.ts';
import { breach, unheld } from './breach.ts';
import { type Done, firstOfEach } from './done.ts';
import { type Impossible, impossible, isImpossible, listed } from './impossible.ts';
import { imbalanceOf, loadOf, offSteel, type Scene, shortOf } from './scene.ts';
import type { Breach } from './verdict.ts';

type BrickStep = Extract<Step, { readonly act: 'add' | 'remove' }>;

/** More plates than any arbor has; a number past it is a slip of the pen. */
const PLATES_AT_MOST = 1000;

export const handleBricks = (scene: Scene, step: BrickStep): Done | Impossible => {
  const { physics } = scene;
  const refuse = (why: Parameters<typeof impossible>[0], found: string, accepted: string) =>
    impossible(why, scene.step, found, accepted);
  if (!Number.isInteger(step.count) || step.count < 1 || step.count > PLATES_AT_MOST) {
    return refuse('badCount', String(step.count), `a whole number from 1 to ${PLATES_AT_MOST}`);
  }
  if (!physics.bricks.some(({ id }) => id === step.kind)) {
    return refuse('unknownKind', step.kind, listed(physics.bricks.map(({ id }) => id)));
  }
  const gallery = physics.galleries.find(({ id }) => id === step.gallery);
  if (gallery === undefined) {
    return refuse('unknownGallery', step.gallery, listed(physics.galleries.map(({ id }) => id)));
  }
  const breaches: Breach[] = [
    ...placeBreaches(scene, gallery),
    ...stockBreaches(scene, step),
    ...alikeBreaches(scene, step),
  ];
  let now = scene;
  for (let plate = 1; plate <= step.count; plate += 1) {
    const answer = onePlate(now, step, gallery, plate);
    if (isImpossible(answer)) return answer;
    breaches.push(...answer.breaches);
    now = answer.scene;
  }
  return { scene: now, breaches: firstOfEach(breaches), proofs: ['count the plates aloud'] };
};

/** Nobody under the bricks (V5), and no loader inside the drop zone of a higher gallery (V6). */
const placeBreaches = (scene: Scene, gallery: OrderGallery): readonly Breach[] => {
  const { closed } = scene.standing;
  const shut = (id: string): boolean =>
    closed.some((zone) => zone.zone === 'drop' && zone.gallery === id);
  const above = scene.physics.galleries.find(
    ({ id, floorM }) => floorM > gallery.floorM && shut(id),
  );
  const named = { gallery: gallery.id, facts: { gallery: gallery.name } };
  return [
    ...(shut(gallery.id) ? [] : [breach(scene, { rule: 'ORD-013', ...named })]),
    ...(above === undefined
      ? []
      : [
          breach(scene, {
            rule: 'ORD-036',
            gallery: gallery.id,
            facts: { gallery: gallery.name, upper: above.name },
          }),
        ]),
  ];
};

const stockBreaches = (scene: Scene, step: BrickStep): readonly Breach[] => {
  const have = scene.stock[step.gallery]?.[step.kind] ?? 0;
  if (step.act === 'remove' || step.count <= have) return [];
  return [
    breach(scene, {
      rule: 'ORD-015',
      gallery: step.gallery,
      measured: measure(step.count, 'count'),
      limit: measure(have, 'count'),
      facts: { kind: step.kind, gallery: galleryName(scene, step.gallery) },
    }),
  ];
};

/**
 * Bricks of a kind that a loader can take for this one lie at the same gallery (trap 10): the
 * stack is then right on paper and wrong on the arbor.
 */
const alikeBreaches = (scene: Scene, { kind, gallery }: BrickStep): readonly Breach[] => {
  const { bricks } = scene.physics;
  const own = bricks.find(({ id }) => id === kind);
  const loose = scene.stock[gallery] ?? {};
  const alike = bricks.filter(
    ({ id, looksLike, massKg }) =>
      id !== kind &&
      (looksLike.includes(kind) || own?.looksLike.includes(id) === true) &&
      (loose[id] ?? 0) > 0 &&
      massKg !== own?.massKg,
  );
  const [other] = alike;
  if (own === undefined || other === undefined) return [];
  return [
    breach(scene, {
      rule: 'ORD-051',
      gallery,
      measured: measure(Math.abs(own.massKg - other.massKg), 'mass'),
      facts: {
        kind,
        others: listed(alike.map(({ id }) => id)),
        gallery: galleryName(scene, gallery),
      },
    }),
  ];
};

const galleryName = ({ physics }: Scene, id: string): string =>
  physics.galleries.find((gallery) => gallery.id === id)?.name ?? id;

const onePlate = (
  scene: Scene,
  step: BrickStep,
  gallery: OrderGallery,
  plate: number,
): { readonly scene: Scene; readonly breaches: readonly Breach[] } | Impossible => {
  const reach = reachBreaches(scene, gallery, plate);
  const stack = step.act === 'add' ? putOn(scene.standing.stack, step.kind) : null;
  const top = topPlate(scene.standing.stack);
  if (stack === null && top?.kind !== step.kind) {
    const found = `${step.kind}, plate ${plate} of ${step.count}`;
    return impossible('notOnTop', scene.step, found, top?.kind ?? 'no plate is left to take');
  }
  const next = withStack(scene, step, stack ?? takeOff(scene.standing.stack));
  const facts = { plate: measure(plate, 'count') };
  const short = shortOf(next, loadOf(next), scene.physics.lockLimitN);
  const rule = step.act === 'add' ? 'ORD-003' : 'ORD-004';
  return {
    scene: next,
    breaches: [
      ...reach,
      ...(short === null ? [] : [unheld(next, rule, short, { facts })]),
      ...(step.act === 'add' ? addBreaches(next, plate) : pipeBreaches(scene, top, plate)),
    ],
  };
};

const reachBreaches = (
  scene: Scene,
  { id, name, reachFromM, reachToM }: OrderGallery,
  plate: number,
): readonly Breach[] => {
  const handledM = scene.physics.topOfStackM(scene.standing);
  if (!isBelow(handledM, reachFromM) && !isAbove(handledM, reachToM)) return [];
  return [
    breach(scene, {
      rule: 'ORD-014',
      gallery: id,
      measured: measure(handledM, 'length'),
      facts: {
        plate: measure(plate, 'count'),
        gallery: name,
        lower: measure(reachFromM, 'length'),
        upper: measure(reachToM, 'length'),
      },
    }),
  ];
};

const topPlate = (stack: Standing['stack']): StackRun | undefined =>
  stack.findLast(({ tag, count }) => tag !== 'spreader' && count > 0);

const putOn = (stack: Standing['stack'], kind: string): Standing['stack'] => {
  const top = stack.at(-1);
  return top?.kind === kind && top.tag === 'show'
    ? [...stack.slice(0, -1), { ...top, count: top.count + 1 }]
    : [...stack, { kind, count: 1, tag: 'show' }];
};

/** Without its uppermost brick; a spreader plate that lay on it is lifted off with it. */
const takeOff = (stack: Standing['stack']): Standing['stack'] => {
  const at = stack.findLastIndex(({ tag, count }) => tag !== 'spreader' && count > 0);
  const top = stack[at];
  if (top === undefined) return stack;
  const below = stack.slice(0, at);
  return top.count === 1 ? below : [...below, { ...top, count: top.count - 1 }];
};

const withStack = (scene: Scene, step: BrickStep, stack: Standing['stack']): Scene => {
  const { physics, stock, standing, seen } = scene;
  const shelf = stock[step.gallery] ?? {};
  const change = step.act === 'add' ? -1 : 1;
  const next = { ...standing, stack };
  // What a pull has shown stays shown, but for what the new brick may itself be off by.
  const newDoubtN = Math.abs(
    imbalanceOf(physics, next).doubtN - imbalanceOf(physics, standing).doubtN,
  );
  return {
    ...scene,
    standing: next,
    stock: {
      ...stock,
      [step.gallery]: { ...shelf, [step.kind]: (shelf[step.kind] ?? 0) + change },
    },
    seen: seen === null ? null : { leastN: seen.leastN - newDoubtN, mostN: seen.mostN + newDoubtN },
  };
};

const addBreaches = (scene: Scene, plate: number): readonly Breach[] => [
  ...rodBreaches(scene, plate),
  ...arborBreaches(scene, plate),
  ...drillBreaches(scene, plate),
  ...slackSteel(scene),
];

const rodBreaches = (scene: Scene, plate: number): readonly Breach[] => {
  const { physics, standing } = scene;
  const stackM = physics.topOfStackM(standing) - physics.topOfStackM({ ...standing, stack: [] });
  if (!isAbove(stackM, physics.rodM)) return [];
  return [
    breach(scene, {
      rule: 'ORD-016',
      measured: measure(stackM, 'length'),
      limit: measure(physics.rodM, 'length'),
      facts: { plate: measure(plate, 'count') },
    }),
  ];
};

/** The arbor, its tolerance at its worst where masses are so judged, within what it may weigh. */
const arborBreaches = (scene: Scene, plate: number): readonly Breach[] => {
  const { physics, standing, options } = scene;
  const limitKg = physics.arborMassLimitKg;
  const { massKg, doubtKg } = physics.arborKg(standing.stack);
  const worstKg = massKg + (options.doubt === 'none' ? 0 : doubtKg);
  if (limitKg === null || !isAbove(worstKg, limitKg)) return [];
  return [
    breach(scene, {
      rule: 'ORD-050',
      measured: measure(worstKg, 'mass'),
      limit: measure(limitKg, 'mass'),
      facts: { plate: measure(plate, 'count') },
    }),
  ];
};

/**
 * R8: where the masses are in more doubt than the lock holds, no count of bricks is right on
 * paper. Only what leaves the set batten heavy with all of them at their lightest goes on.
 */
const drillBreaches = (scene: Scene, plate: number): readonly Breach[] => {
  const { physics, options } = scene;
  if (options.doubt === 'none') return [];
  const { highN, doubt } = loadOf(scene);
  const doubtN = (doubt.mostN - doubt.leastN) / 2;
  const lightestN = highN + doubt.leastN;
  if (!isAbove(doubtN, physics.lockLimitN) || !isBelow(lightestN, 0)) return [];
  return [
    breach(scene, {
      rule: 'ORD-025',
      byN: -lightestN,
      measured: measure(lightestN, 'imbalance'),
      facts: { plate: measure(plate, 'count'), doubt: measure(doubtN, 'force') },
    }),
  ];
};

/** Bricks past balance lift the load off its steel, and nobody has looked at the other side. */
export const slackSteel = (scene: Scene): readonly Breach[] => {
  const { physics, standing } = scene;
  if (standing.service !== 'deadHung') return [];
  const { highN } = physics.at(offSteel(standing));
  if (!isBelow(highN, 0)) return [];
  return [breach(scene, { rule: 'ORD-022', byN: -highN, measured: measure(highN, 'imbalance') })];
};

const pipeBreaches = (scene: Scene, top: StackRun | undefined, plate: number): readonly Breach[] =>
  top?.tag === 'pipe'
    ? [breach(scene, { rule: 'ORD-017', facts: { plate: measure(plate, 'count') } })]
    : [];
