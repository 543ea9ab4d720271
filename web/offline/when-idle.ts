/** On a page that is never idle, what can wait is done all the same after so long. */
const PATIENCE_MS = 5000;

/** Calls once what a person waits for is done. */
export const whenIdle = (call: () => void): void => {
  if ('requestIdleCallback' in window) window.requestIdleCallback(call, { timeout: PATIENCE_MS });
  else setTimeout(call, PATIENCE_MS);
};
