import type { Measure } from './measure.ts';
import type { Working } from './working.ts';

/** note: true and harmless. caution: a person must look. stop: not before it is mended. */
export const LEVELS = ['note', 'caution', 'stop'] as const;
export type Level = (typeof LEVELS)[number];

/** Where a finding lies. No set means the whole house. */
export type Place = {
  readonly set?: string;
  readonly item?: string;
  readonly gallery?: string;
  readonly brickKind?: string;
  readonly heightM?: number;
};

/** What a rule says of an assessment. The words are made in `sheets`. */
export type Finding = {
  readonly code: string;
  readonly level: Level;
  readonly at: Place;
  readonly measured: Measure | null;
  readonly limit: Measure | null;
  /** Where the limit comes from: a published source, a house rule, or common practice. */
  readonly limitSource: string;
  /** More that the sentence needs, by name. */
  readonly facts: Readonly<Record<string, Measure | string>>;
  readonly working: Working | null;
};

/** The gravest level among findings; null where there is none. */
export const worstLevel = (findings: readonly { readonly level: Level }[]): Level | null =>
  findings.reduce<Level | null>(
    (worst, { level }) =>
      worst === null || LEVELS.indexOf(level) > LEVELS.indexOf(worst) ? level : worst,
    null,
  );
