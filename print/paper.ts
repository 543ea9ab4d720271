/** Sizes of paper, and what is left of them for a sheet. */
import { BODY_WIDTH, type Sheet } from '#sheets';

/** Points. Letter 8.5 by 11 in; A4 210 by 297 mm (ISO 216). */
export const PAPERS = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.28, height: 841.89 },
} as const;

export type Paper = keyof typeof PAPERS;

/** Where the body of a page lies: as wide on both papers, in the middle of each. */
export type Edges = { readonly width: number; readonly margin: number };

export const edgesOf = ({ orientation }: Pick<Sheet, 'orientation'>, paper: Paper): Edges => {
  const size = PAPERS[paper];
  const width = BODY_WIDTH[orientation];
  const across = orientation === 'portrait' ? size.width : size.height;
  return { width, margin: (across - width) / 2 };
};
