import type { Known } from '#house';
import type { ClothTakeoff } from '#show';
import type { Composition, WorkingDraft } from './composition.ts';
import { single } from './composition.ts';
import type { Figure, FigureName, ToleranceByBasis } from './figure.ts';
import { figureOf, termOf } from './figure.ts';
import { DROP } from './item-sizes.ts';
import type { Draft } from './line.ts';
import { onePlus, times } from './line.ts';

/**
 * Mass of a cloth, and of the pipe or chain in its hem.
 *
 *     m     = σ · b · D · (1 + f) · (1 + a) · (1 + p) · (1 + q) + n · t
 *     m_hem = u · b
 *
 *     σ      kg/m²  areaMass    mass per area of the cloth as bought
 *     b      m      width       finished width
 *     D      m      drop        from the top to the lowest point
 *     f      -      fullness    cloth added: 0.5 is one and a half widths
 *     a      -      hemAllowance  hems, facings and webbing
 *     p, q   -      paint, moisture  added to the dry, bare cloth
 *     n, t   -, kg  ties        how many, and each
 *     u      kg/m   bottomMassPerLength  pipe or chain per metre of finished width
 *     m, m_hem  kg  returned
 *
 * Source  area times mass per area; shares as the trade adds them, the-job.md C10
 * Holds   all figures >= 0
 * Omits   the length that a chain gains by following the folds, up to the fullness: its mass is
 *         given per metre of finished width (a pipe is straight, so for a pipe they are the same);
 *         that ties and webbing hang at the top, not spread over the drop, which understates
 *         what hangs while cloth lies on the deck by their mass at most
 * Check   VAL-TKO-01 to VAL-TKO-04, VAL-TKO-16
 */
export const composeCloth = (
  cloth: ClothTakeoff,
  drop: Known<number>,
  toleranceByBasis: ToleranceByBasis,
): Composition => {
  const read = (given: Known<number>, name: FigureName): Figure =>
    figureOf(given, name, toleranceByBasis);
  const shares = SHARES.map(([field, name]) => read(cloth[field], name));
  const area = [
    read(cloth.areaMass, NAMES.areaMass),
    read(cloth.width, NAMES.width),
    read(drop, DROP),
  ];
  const ties = cloth.ties === null ? [] : [tiesOf(cloth.ties, read)];
  const body = single('cloth', ...area.map(times), ...shares.map(onePlus));
  const hem = cloth.bottomMassPerLength && read(cloth.bottomMassPerLength, NAMES.bottom);
  const width = read(cloth.width, NAMES.width);
  return {
    drafts: [body, ...ties.map(({ draft }) => draft)],
    hemDrafts: hem && [{ ...single(HEM_NAME, times(hem), times(width)), isHem: true }],
    faults: [],
    working: workingOf([...area, ...shares, ...ties.flatMap(({ figures }) => figures)]),
    hemWorking: hem && hemWorkingOf(hem, width),
  };
};

export const HEM_NAME = 'pipe or chain in the hem';

const NAMES = {
  areaMass: {
    symbol: 'σ',
    meaning: 'mass per area of the cloth',
    kind: 'massPerArea',
    field: 'takeoff.areaMass',
  },
  width: { symbol: 'b', meaning: 'finished width', kind: 'length', field: 'takeoff.width' },
  bottom: {
    symbol: 'u',
    meaning: 'pipe or chain in the hem, per length of finished width',
    kind: 'massPerLength',
    field: 'takeoff.bottomMassPerLength',
  },
  ties: { symbol: 'n', meaning: 'number of ties', kind: 'count', field: 'takeoff.ties.count' },
  tie: { symbol: 't', meaning: 'mass of one tie', kind: 'mass', field: 'takeoff.ties.each' },
} as const satisfies Readonly<Record<string, FigureName>>;

type Share = 'fullness' | 'hemAllowance' | 'paint' | 'moisture';

const share = (field: Share, symbol: string, meaning: string): readonly [Share, FigureName] => [
  field,
  { symbol, meaning, kind: 'ratio', field: `takeoff.${field}`, ifNone: '0 %' },
];

const SHARES = [
  share('fullness', 'f', 'fullness, as cloth added'),
  share('hemAllowance', 'a', 'hems, facings and webbing, as a share of the cloth'),
  share('paint', 'p', 'paint, as a share of the cloth'),
  share('moisture', 'q', 'moisture, as a share of the dry cloth'),
] as const;

const tiesOf = (
  ties: NonNullable<ClothTakeoff['ties']>,
  read: (given: Known<number>, name: FigureName) => Figure,
): { readonly draft: Draft; readonly figures: readonly Figure[] } => {
  const count = read(ties.count, NAMES.ties);
  const each = read(ties.each, NAMES.tie);
  return { draft: { ...single('ties', times(each)), count }, figures: [count, each] };
};

const workingOf = (figures: readonly Figure[]): WorkingDraft => ({
  title: 'mass of the cloth',
  formula:
    'σ · b · D · ( 1 + f ) · ( 1 + a ) · ( 1 + p ) · ( 1 + q )' +
    (figures.some(({ symbol }) => symbol === NAMES.ties.symbol) ? ' + n · t' : ''),
  terms: figures.map(termOf),
  source: 'area times mass per area; allowances are shares added, as is common practice',
  omits: 'ties and webbing hang at the top: while cloth lies on the deck a little more hangs',
});

const hemWorkingOf = (hem: Figure, width: Figure): WorkingDraft => ({
  title: 'mass of the pipe or chain in the hem',
  formula: 'u · b',
  terms: [hem, width].map(termOf),
  source: 'length times mass per length',
  omits: 'a chain that follows the folds is longer than the finished width: more hangs',
});
