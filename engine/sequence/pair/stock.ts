/** Bricks that both sets take from the same galleries. */
import type { OrderPhysics, Step } from '#state';

type Given = ReadonlyMap<string, number>;

const keyOf = (gallery: string, kind: string): string => `${gallery} ${kind}`;

/** What galleries have given after each deed, less what came back to them. */
export const givenAfter = (steps: readonly Step[]): readonly Given[] => {
  const given: Given[] = [new Map()];
  for (const step of steps) {
    const next = new Map(given.at(-1));
    if (step.act === 'add' || step.act === 'remove') {
      const key = keyOf(step.gallery, step.kind);
      next.set(key, (next.get(key) ?? 0) + (step.act === 'add' ? step.count : -step.count));
    }
    given.push(next);
  }
  return given;
};

/** Whether the galleries had all that both have taken. */
export const isInStock = (
  { galleries }: OrderPhysics,
  both: readonly [Given | undefined, Given | undefined],
  { gallery, kind }: { readonly gallery: string; readonly kind: string },
): boolean => {
  const key = keyOf(gallery, kind);
  const taken = both.reduce((sum, given) => sum + (given?.get(key) ?? 0), 0);
  return taken <= (galleries.find(({ id }) => id === gallery)?.stock[kind] ?? 0);
};

/** The house as the second set finds it once the first has taken its bricks. */
export const stockLess = (physics: OrderPhysics, steps: readonly Step[]): OrderPhysics => {
  const given = givenAfter(steps).at(-1);
  return {
    ...physics,
    galleries: physics.galleries.map(({ stock, ...gallery }) => ({
      ...gallery,
      stock: Object.fromEntries(
        Object.entries(stock).map(([kind, count]) => [
          kind,
          Math.max(0, count - (given?.get(keyOf(gallery.id, kind)) ?? 0)),
        ]),
      ),
    })),
  };
};
