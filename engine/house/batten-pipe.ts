import type { CubicMetres, Metres, MetresToTheFourth, Pascals } from '#quantities';
import type { Known } from './known.ts';

/** Which wall the section values rest on: they differ by about 6 %, so it is always said. */
export const WALLS = ['nominal', 'design'] as const;
export type Wall = (typeof WALLS)[number];

/** What a batten is made of, as far as bending goes. */
export type BattenPipe = {
  readonly secondMoment: Known<MetresToTheFourth>;
  /** Elastic. */
  readonly sectionModulus: Known<CubicMetres>;
  readonly plasticModulus: Known<CubicMetres>;
  readonly elasticModulus: Known<Pascals>;
  readonly yieldStrength: Known<Pascals>;
  readonly wall: Wall | null;
};

/** A joint of two lengths of pipe; `strength` is the share of the whole pipe's moment it takes. */
export type Splice = { readonly x: Metres; readonly strength: Known<number> };
