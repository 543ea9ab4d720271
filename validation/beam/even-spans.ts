/** Beams on level rigid supports an equal span apart, as the tables of handbooks have them. */
import { asNumber, type Exact, exact, over, plus, times } from '../exact.ts';
import { RIGIDITY } from './asking.ts';
import type { ExactBeam, ExactLoad } from './three-moments.ts';

export const SPAN = exact('3');
/** N/m, or N in the middle of a span. */
export const LOAD = exact('100');

export type Kind = 'even' | 'central';

/** Which spans are loaded, from the left. */
export const evenSpans = (loaded: readonly boolean[], kind: Kind): ExactBeam => {
  const at = (index: number): Exact => times(SPAN, exact(String(index)));
  const loads = loaded.flatMap((isLoaded, i): readonly ExactLoad[] => {
    if (!isLoaded) return [];
    if (kind === 'even') return [{ from: at(i), to: at(i + 1), perLength: LOAD }];
    return [{ at: plus(at(i), over(SPAN, exact('2'))), force: LOAD }];
  });
  const supports = [0, ...loaded.map((_, i) => i + 1)].map(at);
  return { left: at(0), right: at(loaded.length), supports, loads };
};

export const allLoaded = (spans: number): readonly boolean[] => Array<boolean>(spans).fill(true);

/** `'-3/28'` or `'0.446'`. */
export const fraction = (text: string): Exact => {
  const [top = '', bottom = '1'] = text.split('/');
  return over(exact(top), exact(bottom));
};
export const fractions = (list: string): readonly Exact[] => list.split(', ').map(fraction);

const length = asNumber(SPAN);
const load = asNumber(LOAD);
/** What a coefficient is multiplied by. */
export const SCALES = {
  even: {
    reaction: load * length,
    moment: load * length ** 2,
    deflection: (load * length ** 4) / RIGIDITY,
  },
  central: {
    reaction: load,
    moment: load * length,
    deflection: (load * length ** 3) / RIGIDITY,
  },
} as const;

/** Half a digit more than was printed is a different number. */
export const digitsOff = (found: number, printed: string): number =>
  Math.abs(found - Number(printed)) * 10 ** (printed.split('.')[1] ?? '').length;

type Ends = { readonly left: number; readonly right: number };

/**
 * Deflection at a share t of a span between two support moments, all as coefficients; and its
 * slope. Double integration of M = E·I·(−y'') with both ends level.
 */
export const bentSpan = (kind: Kind, loaded: boolean, { left, right }: Ends) => {
  const own = (t: number): number => {
    if (!loaded) return 0;
    if (kind === 'even') return (t - 2 * t ** 3 + t ** 4) / 24;
    const near = Math.min(t, 1 - t);
    return (near * (3 - 4 * near * near)) / 48;
  };
  return (t: number): number =>
    own(t) + (left * (2 * t - 3 * t * t + t ** 3) + right * (t - t ** 3)) / 6;
};

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a span bends down most: the best of a hundred places, then by golden section. */
export const deepest = (y: (t: number) => number): { readonly t: number; readonly y: number } => {
  let best = 0;
  for (let step = 1; step < 100; step++) if (y(step / 100) > y(best)) best = step / 100;
  let [low, high] = [Math.max(0, best - 0.01), Math.min(1, best + 0.01)];
  for (let step = 0; step < 60; step++) {
    const [one, other] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (y(one) > y(other)) high = other;
    else low = one;
  }
  const t = (low + high) / 2;
  return { t, y: y(t) };
};
