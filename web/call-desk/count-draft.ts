/** Loose bricks of a gallery as counted anew: a kind that is left empty was not counted. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { parseQuantity } from '#quantities';

export const stockOf = (
  typed: Readonly<Record<string, string>>,
): Result<Readonly<Record<string, number>>, readonly Refusal[]> => {
  const stock: { [kind: string]: number } = {};
  const refusals: Refusal[] = [];
  for (const [kind, text] of Object.entries(typed)) {
    if (text.trim() === '') continue;
    const read = parseQuantity('count', text);
    if (read.ok) stock[kind] = read.value;
    else refusals.push({ ...read.error, path: kind });
  }
  return refusals.length > 0 ? fail(refusals) : ok(stock);
};
