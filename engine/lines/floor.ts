import { GRAVITY, type NewtonsPerMetre, newtonsPerMetre, type Pascals, pascals } from '#quantities';

/**
 * Pressure on the floor of a gallery, bricks and people over the whole of it.
 *
 *     p = g·(m_b + m_p) / (L·b)
 *
 *     m_b   kg  bricksKg
 *     m_p   kg  peopleAndToolsKg
 *     L, b  m   lengthM, widthM
 *
 * Source  definition; the-job.md C43
 * Omits   that bricks stand in rows and not spread: floorRow has the load along a row (more there)
 * Check   the-job.md C44
 */
export const floorLoad = ({
  bricksKg,
  peopleAndToolsKg,
  lengthM,
  widthM,
}: {
  readonly bricksKg: number;
  readonly peopleAndToolsKg: number;
  readonly lengthM: number;
  readonly widthM: number;
}): Pascals => pascals((GRAVITY * (bricksKg + peopleAndToolsKg)) / (lengthM * widthM));

/** So many bricks of one kind, each with the length of floor that one takes in the row. */
export type BricksOnFloor = {
  readonly count: number;
  readonly massKg: number;
  readonly floorLengthM: number;
};

export type FloorRow = {
  /** Bricks on one another, where they stand highest. */
  readonly courses: number;
  readonly lineLoad: NewtonsPerMetre;
};

/**
 * Load along a row of bricks so many courses high, all of one kind.
 *
 *     q = N·b·ρ·g
 *
 *     N  -   courses
 *     b  kg  massKg        one brick
 *     ρ  /m  1/floorLengthM  bricks along each metre of the row
 *
 * Source  definition; the-job.md C44: 8 courses of 25 lb bricks, two to the foot, give 400 lb/ft
 */
export const rowLoad = ({
  courses,
  massKg,
  floorLengthM,
}: {
  readonly courses: number;
  readonly massKg: number;
  readonly floorLengthM: number;
}): NewtonsPerMetre => newtonsPerMetre((courses * massKg * GRAVITY) / floorLengthM);

/** A row that is full to a billionth of a brick is full: lengths come from feet. */
const ROUNDING = 1e-9;

/**
 * Courses that a stock needs in one row along a gallery, and the load along that row.
 *
 *     N = ⌈ Σ n_k / ⌊L / l⌋ ⌉          q = N · max(b_k / l_k) · g
 *
 *     n_k  -   count         of kind k
 *     L    m   lengthM       of the gallery
 *     l    m   the longest of the floor lengths l_k: bricks are laid whole
 *     b_k  kg  massKg
 *
 * Source  the-job.md C44, with the densest kind in every course
 * Holds   a level row without gaps; no brick longer than the gallery
 * Omits   the way kinds are mixed in a stack: with more than one kind this is the most that any
 *         mixing gives (safe)
 * Check   floor.test.ts: 1120 bricks on 70 ft stand 8 high
 */
export const floorRow = (kinds: readonly BricksOnFloor[], lengthM: number): FloorRow => {
  const standing = kinds.filter(({ count }) => count > 0);
  if (standing.length === 0) return { courses: 0, lineLoad: newtonsPerMetre(0) };
  const bricks = standing.reduce((sum, { count }) => sum + count, 0);
  const longestM = Math.max(...standing.map(({ floorLengthM }) => floorLengthM));
  const inRow = Math.max(1, Math.floor(lengthM / longestM + ROUNDING));
  const courses = Math.ceil(bricks / inRow);
  const loads = standing.map((kind) => rowLoad({ ...kind, courses }));
  return { courses, lineLoad: newtonsPerMetre(Math.max(...loads)) };
};
