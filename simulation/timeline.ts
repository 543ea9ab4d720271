/** Time that passes only when something is to happen; what is due at one moment keeps its order. */
type Due = { readonly atMs: number; readonly order: number; readonly call: () => void };

const isBefore = (one: Due, other: Due): boolean =>
  one.atMs === other.atMs ? one.order < other.order : one.atMs < other.atMs;

export class Timeline {
  #nowMs = 0;
  #order = 0;
  /** A heap: none is due before its parent, which stands at half its place. */
  readonly #heap: Due[] = [];

  get nowMs(): number {
    return this.#nowMs;
  }

  /** Calls once, so many ms from now; the answer stops it. */
  in(ms: number, call: () => void): () => void {
    let isOff = false;
    this.#order += 1;
    const due = { atMs: this.#nowMs + Math.max(0, ms), order: this.#order };
    this.#push({ ...due, call: () => (isOff ? undefined : call()) });
    return () => {
      isOff = true;
    };
  }

  /** Calls again and again; the answer stops it. */
  every(ms: number, call: () => void): () => void {
    let stop = (): void => undefined;
    const again = (): void => {
      stop = this.in(ms, again);
      call();
    };
    stop = this.in(ms, again);
    return () => stop();
  }

  /** Until a moment, or until nothing is left to do. */
  run(untilMs: number): void {
    for (;;) {
      const [first] = this.#heap;
      if (first === undefined || first.atMs > untilMs) break;
      this.#pop();
      this.#nowMs = first.atMs;
      first.call();
    }
    this.#nowMs = Math.max(this.#nowMs, untilMs);
  }

  #push(due: Due): void {
    const heap = this.#heap;
    let at = heap.length;
    heap.push(due);
    while (at > 0) {
      const up = (at - 1) >> 1;
      const parent = heap[up];
      if (parent === undefined || isBefore(parent, due)) break;
      heap[at] = parent;
      at = up;
    }
    heap[at] = due;
  }

  #pop(): void {
    const heap = this.#heap;
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return;
    let at = 0;
    for (;;) {
      const [left, right] = [heap[2 * at + 1], heap[2 * at + 2]];
      if (left === undefined) break;
      const isRight = right !== undefined && isBefore(right, left);
      const child = isRight ? right : left;
      if (isBefore(last, child)) break;
      heap[at] = child;
      at = 2 * at + (isRight ? 2 : 1);
    }
    heap[at] = last;
  }
}
