/**
 * Calls when what has just been drawn stands on the screen; the answer stops it. A page that is not
 * looked at draws no pictures, so there it calls soon.
 */
export const afterPicture = (call: () => void): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (): void => {
    timer = setTimeout(call, 0);
  };
  if (document.hidden) soon();
  const frame = document.hidden ? undefined : requestAnimationFrame(soon);
  return () => {
    clearTimeout(timer);
    if (frame !== undefined) cancelAnimationFrame(frame);
  };
};
