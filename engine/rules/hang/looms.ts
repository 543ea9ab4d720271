import type { Known } from '#house';
import type { Item } from '#show';
import { lack } from '../known-values.ts';
import type { Lack } from '../rule.ts';

/** A loom as the show lists it; plain SI. */
export type Loom = {
  readonly item: Item;
  readonly kgPerM: number;
  readonly lengthM: number;
  /** Height of its far end; null where it only drops to the deck. */
  readonly fixedAtM: number | null;
};

/** The looms of a hang, and what is not known of them. */
export const loomsOf = (
  items: readonly Item[],
): { readonly looms: readonly Loom[]; readonly lacks: readonly Lack[] } => {
  const looms: Loom[] = [];
  const lacks: Lack[] = [];
  for (const item of items) {
    if (item.kind !== 'loom' && item.kind !== 'deckLoom') continue;
    if (item.takeoff.by !== 'loom') {
      lacks.push(lack(`length and mass per length of ${item.name}`, 'loom of the set'));
      continue;
    }
    const { massPerLength, length, fixedAt } = item.takeoff;
    const isLooped = item.kind === 'loom';
    const wanted: readonly (readonly [Known<number>, string])[] = [
      [massPerLength, 'mass per length'],
      [length, 'length'],
      ...(isLooped ? [[fixedAt, 'height of the far end'] as const] : []),
    ];
    for (const [value, what] of wanted) {
      if (!value.known) lacks.push(lack(`${what} of ${item.name}`, 'loom of the set'));
    }
    if (!massPerLength.known || !length.known) continue;
    if (isLooped && !fixedAt.known) continue;
    looms.push({
      item,
      kgPerM: massPerLength.value,
      lengthM: length.value,
      fixedAtM: isLooped && fixedAt.known ? fixedAt.value : null,
    });
  }
  return { looms, lacks };
};

/** Low point of a loop above the deck, m; below nothing where part of it lies there. */
export const lowPointM = (loom: Loom, battenM: number): number =>
  loom.fixedAtM === null ? 0 : (loom.fixedAtM + battenM - loom.lengthM) / 2;

/**
 * Mass of loom that hangs on the batten, kg. It grows with the height of the batten.
 *
 *     w · ( h − y ),  y = ( z_c + h − Λ ) / 2,  y not under the deck;  never more than w · Λ
 *
 *     w    kg/m  kgPerM     mass per length
 *     h    m     battenM    batten above the deck
 *     z_c  m     fixedAtM   far end above the deck; none, and y = 0, where it drops to the deck
 *     Λ    m     lengthM    length
 *
 * Source  trade formula C18, C19: each end of a loop carries the cable down to its low point
 * Holds   battenM >= 0
 * Omits   the pull of a loom that has come taut (LOM-001 stops that)
 * Check   3.1 lb/ft, 50 ft, fixed at 38 ft, batten at 36 ft: 74.4 lb (looms.test.ts)
 */
export const hangingLoomKg = (loom: Loom, battenM: number): number =>
  loom.kgPerM * Math.min(battenM - Math.max(lowPointM(loom, battenM), 0), loom.lengthM);
