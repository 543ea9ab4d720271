/** What every page of a sheet is made from: documents, their assessment, and who prints it. */
import { type Assessment, assess, type SetAssessment } from '#assessment';
import type { Finding } from '#findings';
import type { House } from '#house';
import { type OrderSource, showOrders } from '#orders';
import { judge, momentToJudge } from '#rules';
import type { SelfCheckRecord } from '#selfcheck';
import type { Show } from '#show';
import type { HouseNow, HouseState } from '#state';
import { phrase, type Voice } from '#texts';
import type { Stamp } from './sheet.ts';

export type SheetContext = {
  readonly house: House;
  readonly show: Show | null;
  readonly state: HouseState | null;
  readonly assessment: Assessment;
  readonly findings: readonly Finding[];
  readonly stamp: Stamp;
  /** Of the copy of the program that makes the sheet. */
  readonly selfCheck: SelfCheckRecord;
  /**
   * Orders of work of the show, each worked out when a sheet first asks for it; absent is none, and
   * then no sheet that needs one is made.
   */
  readonly orders?: OrderSource;
  /** The house as the call that runs has it; absent or null where none runs. */
  readonly now?: HouseNow | null;
  /** Names of people by the id that the record has; one that is not here stands as its id. */
  readonly people?: Readonly<Record<string, string>>;
};

/** Everything worked through once for the sheets of one house and show, as `check` judges it. */
export const sheetContext = (
  house: House,
  show: Show,
  state: HouseState | null,
  { clockMs, ...round }: Pick<SheetContext, 'stamp' | 'selfCheck'> & { readonly clockMs: number },
): SheetContext => {
  const assessment = assess(house, show, state);
  const nowMs = momentToJudge(house, state, clockMs);
  const findings = judge(house, show, state, assessment, { nowMs });
  const orders = showOrders(house, show, state);
  return { house, show, state, assessment, findings, orders, ...round };
};

export const setOf = ({ assessment }: SheetContext, id: string): SetAssessment | undefined =>
  assessment.sets.find(({ lineSet }) => lineSet.id === id);

/** The name of what the show plans on a set, or why it is left empty. */
export const hangName = (set: SetAssessment, show: Show | null, voice: Voice): string => {
  if (set.hang !== null) return set.hang.name;
  const why = show?.keptEmpty[set.lineSet.id];
  return why === undefined ? phrase(voice, 'empty') : phrase(voice, 'empty: {why}', { why });
};
