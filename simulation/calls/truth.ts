/**
 * The true world beside the record: what people really did to each set, and where they really
 * stand. Nobody in the house sees it whole; the record only has what somebody said of it.
 */
import type { Standing, Step } from '#state';
import type { Demo } from './demo-call.ts';
import { whyUnheld } from './held.ts';
import { afterStep, platesIn, withPlates } from './steps-done.ts';

type Bricks = Extract<Step, { readonly act: 'add' | 'remove' }>;

export class Truth {
  readonly #demo: Demo;
  readonly #sets = new Map<string, Standing>();
  readonly #stock = new Map<string, Map<string, number>>();
  /** Zones in which somebody stands, whatever was said. */
  readonly #people = new Set<string>();
  slips = 0;

  constructor(demo: Demo) {
    this.#demo = demo;
    const { sets, galleries } = demo.opened.payload;
    for (const [id, { standing }] of Object.entries(sets)) {
      if (standing !== null) this.#sets.set(id, standing);
    }
    for (const [id, { stock }] of Object.entries(galleries)) {
      this.#stock.set(id, new Map(Object.entries(stock)));
    }
  }

  /** Null for a set of which not even the first record is whole: it is left alone. */
  of(set: string): Standing | null {
    return this.#sets.get(set) ?? null;
  }

  plates(set: string): number {
    return platesIn(this.of(set)?.stack ?? []);
  }

  stockAt(gallery: string): Readonly<Record<string, number>> {
    return Object.fromEntries(this.#stock.get(gallery) ?? []);
  }

  /** What is done is done, whoever was told; what cannot be done is not. */
  do(set: string, step: Step): boolean {
    if (step.act === 'add' || step.act === 'remove') {
      return this.move(set, step, step.count) === step.count;
    }
    const physics = this.#demo.sets.get(set)?.physics ?? null;
    const before = this.of(set);
    const after = physics === null || before === null ? null : afterStep(physics, before, step);
    if (after === null) return false;
    this.#sets.set(set, after);
    return true;
  }

  /** Bricks one by one; the answer is how many it could be. */
  move(set: string, { act, kind, gallery }: Bricks, count: number): number {
    const loose = this.#stock.get(gallery);
    for (let done = 0; done < count; done += 1) {
      const before = this.of(set);
      const stack = before === null ? null : withPlates(before.stack, kind, act === 'add' ? 1 : -1);
      const left = loose?.get(kind) ?? 0;
      if (before === null || stack === null || (act === 'add' && left === 0)) return done;
      this.#sets.set(set, { ...before, stack });
      loose?.set(kind, left + (act === 'add' ? -1 : 1));
    }
    return count;
  }

  /** Another crew takes bricks for its own work. */
  carryOff(gallery: string, kind: string, left: number): void {
    const loose = this.#stock.get(gallery);
    const before = loose?.get(kind) ?? 0;
    loose?.set(kind, Math.min(before, left));
  }

  /** Put right overnight, by people who look at nothing else: as it stood at the beginning. */
  reset(set: string): void {
    const { standing } = this.#demo.opened.payload.sets[set] ?? { standing: null };
    if (standing !== null) this.#sets.set(set, standing);
  }

  serve(set: string, service: Standing['service']): void {
    const before = this.of(set);
    if (before === null || before.service === 'deadHung') return;
    this.#sets.set(set, { ...before, service });
  }

  /** Somebody walks in, or goes. */
  walk(zone: string, isIn: boolean): void {
    if (isIn) this.#people.add(zone);
    else this.#people.delete(zone);
  }

  isThere(zone: string): boolean {
    return this.#people.has(zone);
  }

  /** Whether the step, done as told on the set as it truly stands, leaves it held by something. */
  isHeldAfter(set: string, step: Step): boolean {
    const physics = this.#demo.sets.get(set)?.physics ?? null;
    const before = this.of(set);
    if (physics === null || before === null) return true;
    const after = afterStep(physics, before, step) ?? before;
    const reckoning = { physics, lockN: physics.lockLimitN, isWorst: false, seen: null };
    return whyUnheld(after, reckoning) === null;
  }
}
