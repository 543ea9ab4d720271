/**
 * The order in which test files are begun. A long one that is begun last keeps one processor
 * busy while the others wait for it; what each took is not known to a fresh copy, so the longest
 * are named here.
 */
import { BaseSequencer, type TestSpecification } from 'vitest/node';

export const LONGEST: readonly string[] = [
  'print/demo-sheets.test.ts',
  'tools/tidy/dependencies.test.ts',
  'sheets/self-check.test.ts',
  'print/self-check.test.ts',
  'journeys/access.test.ts',
  'journeys/exchange.test.ts',
  'journeys/first-hour.test.ts',
  'journeys/order.test.ts',
  'journeys/house-entry.test.ts',
  'journeys/batten.test.ts',
  'journeys/self-check.test.ts',
];

const placeOf = (file: string): number => {
  const place = LONGEST.findIndex((name) => file.replaceAll('\\', '/').endsWith(`/${name}`));
  return place === -1 ? LONGEST.length : place;
};

/** The longest in the order they are named, and the others as they came. */
export const longestFirst = <File extends { readonly moduleId: string }>(
  files: readonly File[],
): readonly File[] =>
  files.toSorted((one, other) => placeOf(one.moduleId) - placeOf(other.moduleId));

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return [...longestFirst(await super.sort(files))];
  }
}
