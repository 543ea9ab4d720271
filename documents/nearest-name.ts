/** What a person may have meant by a name that is not taken. */

/** Fewest letters put in, taken out or changed to turn one word into the other. */
const editDistance = (one: string, other: string): number => {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (const [index, letter] of [...one].entries()) {
    const next = [index + 1];
    for (const [column, against] of [...other].entries()) {
      const replaced = (row[column] ?? 0) + (letter === against ? 0 : 1);
      next.push(Math.min(replaced, (row[column + 1] ?? 0) + 1, (next[column] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
};

/** Long names may differ by more letters than short ones; above a third it is another word. */
export const nearestName = (written: string, taken: readonly string[]): string | undefined => {
  if (written.length > 60) return undefined;
  let best: { name: string; distance: number } | undefined;
  for (const name of taken) {
    const distance = editDistance(written.toLowerCase(), name.toLowerCase());
    if (distance <= Math.max(1, Math.floor(name.length / 3)) && distance < (best?.distance ?? 99)) {
      best = { name, distance };
    }
  }
  return best?.name;
};
