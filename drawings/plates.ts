/** The plates of a stack one by one, from the bottom up, with the spreader plates between them. */
import type { SetAssessment } from '#assessment';
import type { BrickKind, House } from '#house';
import type { StackRun } from '#state';

export type PlateLook = 'solid' | 'outlined' | 'spreader';

export type Plate = {
  readonly look: PlateLook;
  /** Share of the full width: what only serves as pipe weight is wider, a half narrower. */
  readonly width: number;
  readonly bottomM: number;
  readonly thicknessM: number;
};

/** Plates of one tag that lie together, for one bracket. */
export type PlateBand = {
  readonly tag: StackRun['tag'];
  readonly counts: readonly { readonly kind: string; readonly count: number }[];
  readonly bottomM: number;
  readonly topM: number;
};

export type PlateStack = {
  readonly plates: readonly Plate[];
  readonly bands: readonly PlateBand[];
  readonly heightM: number;
};

const WIDE = 1.14;
const NARROW = 0.8;
/** A kind thinner than this share of the thickest show kind counts as a thin one. */
const THIN_SHARE = 0.75;

const thicknessOf = (kind: BrickKind | undefined): number | null =>
  kind?.thickness.known ? kind.thickness.value : null;

const widthOf = (kind: BrickKind, house: House): number => {
  if (kind.serves.pipeWeight && !kind.serves.show) return WIDE;
  const thickest = Math.max(
    ...house.brickKinds.filter(({ serves }) => serves.show).map((each) => thicknessOf(each) ?? 0),
  );
  return (thicknessOf(kind) ?? thickest) < THIN_SHARE * thickest ? NARROW : 1;
};

type Growing = {
  readonly plates: readonly Plate[];
  readonly bands: readonly PlateBand[];
  readonly topM: number;
  /** Thickness of bricks since the start, which spaces the spreader plates. */
  readonly bricksM: number;
};

/** Spreader plates lie where the bricks reach each spacing; none where the house has none. */
const spreaderAfter = (
  { spreader }: House,
  beforeM: number,
  afterM: number,
): { readonly thicknessM: number } | null => {
  if (spreader === null || !spreader.every.known || !spreader.thickness.known) return null;
  const every = spreader.every.value;
  const slack = every * 1e-9;
  const crossed = Math.floor((afterM + slack) / every) > Math.floor((beforeM + slack) / every);
  return crossed ? { thicknessM: spreader.thickness.value } : null;
};

const withPlate = (
  growing: Growing,
  {
    run,
    kind,
    thicknessM,
    house,
  }: {
    run: StackRun;
    kind: BrickKind;
    thicknessM: number;
    house: House;
  },
): Growing => {
  const plate: Plate = {
    look: run.tag === 'pipe' ? 'solid' : 'outlined',
    width: widthOf(kind, house),
    bottomM: growing.topM,
    thicknessM,
  };
  const bricksM = growing.bricksM + thicknessM;
  const spreader = spreaderAfter(house, growing.bricksM, bricksM);
  const topM = growing.topM + thicknessM;
  const plates = [...growing.plates, plate];
  if (spreader === null) return { ...growing, plates, topM, bricksM };
  const laid: Plate = {
    look: 'spreader',
    width: 1,
    bottomM: topM,
    thicknessM: spreader.thicknessM,
  };
  return { ...growing, plates: [...plates, laid], topM: topM + spreader.thicknessM, bricksM };
};

const withBand = (before: Growing, run: StackRun, bottomM: number): readonly PlateBand[] => {
  const last = before.bands.at(-1);
  const count = { kind: run.kind, count: run.count };
  if (last === undefined || last.tag !== run.tag) {
    return [...before.bands, { tag: run.tag, counts: [count], bottomM, topM: before.topM }];
  }
  return [
    ...before.bands.slice(0, -1),
    { ...last, counts: [...last.counts, count], topM: before.topM },
  ];
};

/** Null where a kind or its thickness is not known: such a stack has no height to draw. */
export const platesOf = (runs: readonly StackRun[], house: House): PlateStack | null => {
  let growing: Growing = { plates: [], bands: [], topM: 0, bricksM: 0 };
  for (const run of runs) {
    // The house's own rule says where spreader plates lie; those in a record are counted there.
    if (run.tag === 'spreader' || run.count === 0) continue;
    const kind = house.brickKinds.find(({ id }) => id === run.kind);
    const thicknessM = thicknessOf(kind);
    if (kind === undefined || thicknessM === null) return null;
    const bottomM = growing.topM;
    for (let index = 0; index < run.count; index += 1) {
      growing = withPlate(growing, { run, kind, thicknessM, house });
    }
    growing = { ...growing, bands: withBand(growing, run, bottomM) };
  }
  return { plates: growing.plates, bands: growing.bands, heightM: growing.topM };
};

/** The runs of the plan or of the record; null where they are not known. */
export const runsOf = (set: SetAssessment, of: 'plan' | 'record'): readonly StackRun[] | null => {
  if (of === 'record') return set.recorded.state.stack;
  if (set.plan.known) return set.plan.value.stack.runs;
  const pipeWeight = set.lineSet.arbor?.pipeWeight ?? null;
  if (set.hang !== null || pipeWeight === null) return null;
  return pipeWeight.map((run) => ({ ...run, tag: 'pipe' }));
};
