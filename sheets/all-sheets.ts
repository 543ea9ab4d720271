/** Every sheet that a house and a show give, by id; each is made only when it is asked for. */
import type { SetAssessment } from '#assessment';
import type { SheetContext } from './context.ts';
import { setOf } from './context.ts';
import { type CheckedOrder, latestOrders } from './order.ts';
import { balanceCard } from './pages/balance-card.ts';
import { beamAndFloorSheet } from './pages/beam-and-floor.ts';
import { brickTickets } from './pages/brick-tickets.ts';
import { calculationReport } from './pages/calculation-report.ts';
import { galleryStockSheet } from './pages/gallery-stock.ts';
import { hangingCard } from './pages/hanging-card.ts';
import { houseSheet } from './pages/house-sheet.ts';
import { galleriesToLoad, loadingSheet } from './pages/loading-sheet.ts';
import { scheduleSheet } from './pages/schedule.ts';
import { selfCheckSheet } from './pages/self-check.ts';
import { strikeSheet, whyNoStrike } from './pages/strike-sheet.ts';
import { takeOffSheet } from './pages/take-off.ts';
import type { Sheet } from './sheet.ts';
import { sameCode } from './sheet-code.ts';

const OF_THE_HOUSE: Readonly<Record<string, (context: SheetContext) => Sheet>> = {
  schedule: scheduleSheet,
  'take-off': takeOffSheet,
  'brick-tickets': brickTickets,
  'gallery-stock': galleryStockSheet,
  'house-sheet': houseSheet,
  'beam-and-floor': beamAndFloorSheet,
};

/**
 * Sheets of the house first, then a balance card for each set and a hanging card for each hung;
 * a strike sheet only for a set whose strike was replayed to its end with nothing broken, and a
 * loading sheet only for a gallery that such orders go to, all of them.
 */
export const sheetIds = ({
  assessment,
  orders = [],
}: Pick<SheetContext, 'assessment' | 'orders'>): readonly string[] => [
  ...Object.keys(OF_THE_HOUSE),
  ...assessment.sets.map(({ lineSet }) => `balance-card/${lineSet.id}`),
  ...assessment.sets
    .filter(({ hang }) => hang !== null)
    .map(({ lineSet }) => `hanging-card/${lineSet.id}`),
  ...assessment.sets
    .filter(({ hang }) => hang !== null)
    .map(({ lineSet }) => `calculation-report/${lineSet.id}`),
  ...assessment.sets
    .filter((set) => strikeOf(set, orders) !== null)
    .map(({ lineSet }) => `strike-sheet/${lineSet.id}`),
  ...galleriesToLoad(latestOrders(orders)).map((gallery) => `loading-sheet/${gallery}`),
];

/** An order that is refused leaves the set without a sheet. */
const strikeOf = (set: SetAssessment, orders: readonly CheckedOrder[]): CheckedOrder | null =>
  latestOrders(orders).find((order) => whyNoStrike(set, order) === null) ?? null;

const loadingSheetOf = (context: SheetContext, gallery: string): Sheet | undefined => {
  const made = loadingSheet(context, gallery, latestOrders(context.orders ?? []));
  return made.ok ? made.value : undefined;
};

const strikeSheetOf = (context: SheetContext, set: SetAssessment): Sheet | undefined => {
  const order = strikeOf(set, context.orders ?? []);
  if (order === null) return undefined;
  const made = strikeSheet(context, set, order);
  return made.ok ? made.value : undefined;
};

/** About the program, whatever the house; so it is not among the sheets of a show. */
export const SELF_CHECK_ID = 'self-check';

/** One sheet; undefined where no sheet has that id, or its set is not in the house. */
export const sheetOf = (context: SheetContext, id: string): Sheet | undefined => {
  if (id === SELF_CHECK_ID) return selfCheckSheet(context.selfCheck, context.stamp);
  const whole = OF_THE_HOUSE[id];
  if (whole !== undefined) return whole(context);
  const slash = id.indexOf('/');
  const kind = id.slice(0, Math.max(0, slash));
  if (kind === 'loading-sheet') return loadingSheetOf(context, id.slice(slash + 1));
  const set = setOf(context, id.slice(slash + 1));
  if (set === undefined) return undefined;
  if (kind === 'balance-card') return balanceCard(context, set);
  if (kind === 'strike-sheet') return strikeSheetOf(context, set);
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
