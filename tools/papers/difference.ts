/** Where two texts part: `:12 says "x", and should say "y"`. Nothing when they are the same. */
export const firstDifference = (kept: string, made: string): string | undefined => {
  if (kept === made) return undefined;
  const [old, fresh] = [kept.split('\n'), made.split('\n')];
  const index = fresh.findIndex((line, at) => line !== old[at]);
  const at = index === -1 ? fresh.length : index;
  const shown = (line: string | undefined): string =>
    line === undefined ? 'nothing' : `"${line.slice(0, 60)}"`;
  return `:${at + 1} says ${shown(old[at])}, and should say ${shown(fresh[at])}`;
};
