/**
 * A brick problem as the search sees it: so many kinds, each between two counts, and the windows
 * of brick thickness in which the stack takes one number of spreader plates.
 */
import { spreaderCount } from '#house';
import { assert } from '#outcome';

/** One kind of brick: kg and m a piece, and how many there are. */
export type BrickStock = {
  readonly id: string;
  readonly mass: number;
  readonly thickness: number;
  readonly stock: number;
};

/** One spreader plate: kg and m, and the brick thickness in m between two of them. */
export type SpreaderPlates = {
  readonly mass: number;
  readonly thickness: number;
  readonly every: number;
  readonly rule: 'floor' | 'ceil';
};

/** What is wanted on the arbor, above the bricks that lie there already, and what bounds it. */
export type StackTask = {
  readonly bricks: readonly BrickStock[];
  readonly spreader: SpreaderPlates | null;
  /** m of usable rod. */
  readonly stackHeight: number;
  /** m of bricks that lie below already. The plates that they take are counted here. */
  readonly baseThickness: number;
  /** kg of bricks to put on and of all plates that would be exact. */
  readonly want: number;
  /** kg, the least and the most that may be put on. Infinite where nothing bounds it. */
  readonly massFrom: number;
  readonly massTo: number;
};

export type KindRange = BrickStock & { readonly from: number; readonly to: number };

/** Brick thickness put on, from (inclusive) to (exclusive), and the plates of that stack. */
export type PlateWindow = {
  readonly plates: number;
  readonly plateMass: number;
  readonly thicknessFrom: number;
  readonly thicknessTo: number;
};

export type MixProblem = {
  readonly kinds: readonly KindRange[];
  readonly windows: readonly PlateWindow[];
  readonly want: number;
  /** Both with MASS_TIE on the side of leave. */
  readonly massFrom: number;
  readonly massTo: number;
  /** Places of the kinds, heaviest first, for choices that nothing else decides. */
  readonly heaviestFirst: readonly number[];
};

/** kg. Sums of one mix in two orders differ by 1e-12 kg at most; real differences are in grams. */
export const MASS_TIE = 1e-9;

/** m. A stack that fills the rod to the last digit fits. */
export const ROD_TIE = 1e-9;

/** Spacings this near to a whole number are whole: the same slack as `spreaderCount`. */
const SPACING_TIE = 1e-9;

const WINDOWS_MAX = 10_000;

const windowEdge = ({ every, rule }: SpreaderPlates, plates: number): number =>
  (rule === 'floor' ? plates - SPACING_TIE : plates - 1 + SPACING_TIE) * every;

/**
 * The windows of a stack: plates are counted from the whole brick thickness, base included. A
 * window that its own plates push over the rod's end is cut or dropped, so that a mix which lies
 * in a window stands on the rod.
 */
const plateWindows = (
  { spreader, baseThickness }: StackTask,
  rodM: number,
  thicknessMaxM: number,
): readonly PlateWindow[] => {
  const roomFor = (platesM: number): number =>
    Math.min(rodM - platesM - baseThickness, thicknessMaxM) + ROD_TIE;
  if (spreader === null) {
    const thicknessTo = roomFor(0);
    return thicknessTo > 0
      ? [{ plates: 0, plateMass: 0, thicknessFrom: Number.NEGATIVE_INFINITY, thicknessTo }]
      : [];
  }
  const base = spreaderCount(baseThickness, spreader.every, spreader.rule);
  const windows: PlateWindow[] = [];
  for (let plates = base; plates < base + WINDOWS_MAX; plates += 1) {
    const room = roomFor(plates * spreader.thickness);
    const edge = windowEdge(spreader, plates) - baseThickness;
    // Above the first window the edge only rises and the room only shrinks.
    if (plates > base && edge >= room) return windows;
    const thicknessFrom = plates === base ? Number.NEGATIVE_INFINITY : edge;
    const thicknessTo = Math.min(windowEdge(spreader, plates + 1) - baseThickness, room);
    if (thicknessTo > Math.max(thicknessFrom, 0)) {
      windows.push({ plates, plateMass: plates * spreader.mass, thicknessFrom, thicknessTo });
    }
  }
  throw new Error(`defect: more than ${WINDOWS_MAX} spreader plates on one arbor`);
};

const assertTask = (task: StackTask): void => {
  const ids = new Set(task.bricks.map((brick) => brick.id));
  assert(ids.size === task.bricks.length, 'two kinds of brick share an id');
  for (const { id, mass, thickness, stock } of task.bricks) {
    assert(mass > 0 && mass < Number.POSITIVE_INFINITY, `brick ${id} has a mass above zero`);
    assert(thickness >= 0 && thickness < Number.POSITIVE_INFINITY, `brick ${id} has a thickness`);
    assert(Number.isInteger(stock) && stock >= 0, `the stock of brick ${id} is a whole number`);
  }
  const { spreader } = task;
  assert(spreader === null || spreader.every > 0, 'spreader plates have a spacing above zero');
  assert(spreader === null || spreader.mass >= 0, 'a spreader plate has a mass of zero or more');
  assert(spreader === null || spreader.thickness >= 0, 'a spreader plate has a thickness');
  assert(Number.isFinite(task.want), 'the wanted mass is a number');
  assert(task.stackHeight >= 0 && task.baseThickness >= 0, 'rod and base are zero or more');
};

/** Limits that a question may lift, to learn which of them stands in the way. */
export type Lifted = { readonly stock?: boolean; readonly rod?: boolean };

/** A lifted limit still needs an end: no mix inside the mass limits is thicker or has more. */
const unbounded = 'a task without stock or rod limit needs a largest mass';

/** The task with its counts and windows worked out. */
export const problemOf = (task: StackTask, lifted: Lifted = {}): MixProblem => {
  assertTask(task);
  const massTo = task.massTo + MASS_TIE;
  const rodM = lifted.rod === true ? Number.POSITIVE_INFINITY : task.stackHeight;
  const roomM = rodM - task.baseThickness + ROD_TIE;
  const kinds = task.bricks.map((brick): KindRange => {
    const byRod = brick.thickness > 0 ? roomM / brick.thickness : Number.POSITIVE_INFINITY;
    const byStock = lifted.stock === true ? Number.POSITIVE_INFINITY : brick.stock;
    const to = Math.floor(Math.min(byStock, byRod, massTo / brick.mass));
    assert(Number.isFinite(to), unbounded);
    return { ...brick, from: 0, to: Math.max(0, to) };
  });
  const thickest = kinds.reduce((sum, kind) => sum + kind.to * kind.thickness, 0);
  return {
    kinds,
    windows: plateWindows(task, rodM, thickest),
    want: task.want,
    massFrom: task.massFrom - MASS_TIE,
    massTo,
    heaviestFirst: [...kinds.keys()].sort((a, b) => {
      const [one, other] = [kinds[a] as KindRange, kinds[b] as KindRange];
      return other.mass - one.mass || (one.id < other.id ? -1 : 1);
    }),
  };
};
