/** Which calculations each sheet rests on: a failed case of one of them is said on the sheet. */
import type { Calculation, FailedCase, SelfCheckState } from '#selfcheck';
import type { SheetKind } from './sheet.ts';

const WEIGHED = ['quantities', 'house', 'takeoff'] as const;
const BALANCED = [...WEIGHED, 'balance', 'bricks'] as const;
const ORDERED = [...BALANCED, 'motion'] as const;

export const RESTS_ON: Readonly<Record<SheetKind, readonly Calculation[]>> = {
  // What to look at first may be a finding about lines or batten.
  'balance-card': [...BALANCED, 'pull-test', 'beam', 'lines'],
  'take-off': WEIGHED,
  schedule: BALANCED,
  'hanging-card': WEIGHED,
  'brick-tickets': BALANCED,
  'gallery-stock': ['quantities', 'house'],
  'house-sheet': ['quantities', 'house'],
  'beam-and-floor': [...BALANCED, 'beam', 'lines'],
  section: WEIGHED,
  plan: WEIGHED,
  'calculation-report': [...BALANCED, 'beam', 'lines'],
  'strike-sheet': ORDERED,
  'loading-sheet': ORDERED,
  'unloading-sheet': ORDERED,
  permit: ORDERED,
  briefing: ORDERED,
  // Trims, counts and names; what a rule said of a set, its call worked out.
  handover: WEIGHED,
  'preset-check': WEIGHED,
  // It says itself what failed.
  'self-check': [],
};

/** Failed cases of the calculations that something rests on; none before the check is done. */
export const failedOf = (
  state: SelfCheckState,
  restsOn: readonly Calculation[],
): readonly FailedCase[] =>
  state.is === 'done'
    ? state.report.failed.filter(({ calculation }) => restsOn.includes(calculation))
    : [];
