/** Long enough to get on, short enough that a key pressed meanwhile is answered at once. */
const SLICE_MS = 8;

/** Runs steps a few at a time and lets the page breathe between; the answer stops it. */
export const inSlices = <T>(
  steps: Iterator<undefined, T>,
  done: (answer: T) => void,
): (() => void) => {
  let isStopped = false;
  let timer = setTimeout(slice, 0);
  function slice(): void {
    const until = performance.now() + SLICE_MS;
    while (performance.now() < until) {
      const step = steps.next();
      if (isStopped) return;
      if (step.done === true) {
        done(step.value);
        return;
      }
    }
    timer = setTimeout(slice, 0);
  }
  return () => {
    isStopped = true;
    clearTimeout(timer);
  };
};
