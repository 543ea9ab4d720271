/** What every page of a sheet is made from: documents, their assessment, and who prints it. */
import type { Assessment, SetAssessment } from '#assessment';
import type { Finding } from '#findings';
import type { House } from '#house';
import type { Show } from '#show';
import type { HouseState } from '#state';
import type { Stamp } from './sheet.ts';

export type SheetContext = {
  readonly house: House;
  readonly show: Show | null;
  readonly state: HouseState | null;
  readonly assessment: Assessment;
  readonly findings: readonly Finding[];
  readonly stamp: Stamp;
};

export const setOf = ({ assessment }: SheetContext, id: string): SetAssessment | undefined =>
  assessment.sets.find(({ lineSet }) => lineSet.id === id);

/** The name of what the show plans on a set, or why it is left empty. */
export const hangName = (set: SetAssessment, show: Show | null): string => {
  if (set.hang !== null) return set.hang.name;
  const why = show?.keptEmpty[set.lineSet.id];
  return why === undefined ? 'empty' : `empty: ${why}`;
};
