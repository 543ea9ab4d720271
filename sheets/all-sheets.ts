/** Every sheet that a house and a show give, by id; each is made only when it is asked for. */
import type { SheetContext } from './context.ts';
import { setOf } from './context.ts';
import { balanceCard } from './pages/balance-card.ts';
import { beamAndFloorSheet } from './pages/beam-and-floor.ts';
import { brickTickets } from './pages/brick-tickets.ts';
import { calculationReport } from './pages/calculation-report.ts';
import { galleryStockSheet } from './pages/gallery-stock.ts';
import { handoverSheet } from './pages/handover.ts';
import { hangingCard } from './pages/hanging-card.ts';
import { HOUSE_DRAWINGS, houseDrawingSheet, momentIds } from './pages/house-drawings.ts';
import { houseSheet } from './pages/house-sheet.ts';
import { presetSheet } from './pages/preset.ts';
import { scheduleSheet } from './pages/schedule.ts';
import { selfCheckSheet } from './pages/self-check.ts';
import { takeOffSheet } from './pages/take-off.ts';
import type { Sheet } from './sheet.ts';
import { sameCode } from './sheet-code.ts';
import { workSheetIds, workSheetOf } from './work-sheets.ts';

const OF_THE_HOUSE: Readonly<Record<string, (context: SheetContext) => Sheet>> = {
  schedule: scheduleSheet,
  'take-off': takeOffSheet,
  'brick-tickets': brickTickets,
  'gallery-stock': galleryStockSheet,
  'house-sheet': houseSheet,
  'beam-and-floor': beamAndFloorSheet,
  handover: handoverSheet,
  'preset-check': presetSheet,
};

/**
 * Sheets of the house first, then a balance card for each set and a hanging card for each hung,
 * then those of the work. None is made for the list, and no order is searched for it.
 */
export const sheetIds = ({
  assessment,
  house,
  orders,
}: Pick<SheetContext, 'assessment' | 'house' | 'orders'>): readonly string[] => [
  ...Object.keys(OF_THE_HOUSE),
  ...HOUSE_DRAWINGS.flatMap((kind) => momentIds({ assessment }).map((at) => `${kind}/${at}`)),
  ...assessment.sets.map(({ lineSet }) => `balance-card/${lineSet.id}`),
  ...assessment.sets
    .filter(({ hang }) => hang !== null)
    .map(({ lineSet }) => `hanging-card/${lineSet.id}`),
  ...assessment.sets
    .filter(({ hang }) => hang !== null)
    .map(({ lineSet }) => `calculation-report/${lineSet.id}`),
  ...workSheetIds({ house, orders }),
];

/** About the program, whatever the house; so it is not among the sheets of a show. */
export const SELF_CHECK_ID = 'self-check';

/** One sheet; undefined where no sheet has that id, or its set is not in the house. */
export const sheetOf = (context: SheetContext, id: string): Sheet | undefined => {
  if (id === SELF_CHECK_ID) return selfCheckSheet(context.selfCheck, context.stamp);
  const whole = OF_THE_HOUSE[id];
  if (whole !== undefined) return whole(context);
  const slash = id.indexOf('/');
  const [kind, of] = [id.slice(0, Math.max(0, slash)), id.slice(slash + 1)];
  const work = workSheetOf(context, kind, of);
  if (work !== undefined) return work;
  const drawing = HOUSE_DRAWINGS.find((each) => each === kind);
  if (drawing !== undefined) return houseDrawingSheet(context, drawing, of);
  const set = setOf(context, of);
  if (set === undefined) return undefined;
  if (kind === 'balance-card') return balanceCard(context, set);
  if (kind === 'calculation-report') return calculationReport(context, set);
  return kind === 'hanging-card' && set.hang !== null ? hangingCard(context, set) : undefined;
};

export const allSheets = (context: SheetContext): readonly Sheet[] =>
  sheetIds(context).flatMap((id) => {
    const sheet = sheetOf(context, id);
    return sheet === undefined ? [] : [sheet];
  });

export type CodeAnswer = 'current' | 'superseded' | 'no such sheet';

/** What to say of a printed code, from the documents as they are now. */
export const answerCode = (context: SheetContext, id: string, typed: string): CodeAnswer => {
  const sheet = sheetOf(context, id);
  if (sheet === undefined) return 'no such sheet';
  return sameCode(typed, sheet.footer.code) ? 'current' : 'superseded';
};
