/**
 * The part of the house that is on the paper, and its one scale both ways. Metres along the two
 * axes of a drawing: upstage and up in a section, across the stage and upstage in a plan.
 */
export type FieldView = {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
};

export type FieldSize = { readonly width: number; readonly height: number };

export type FieldScale = FieldSize & {
  /** Units of the drawing for a metre, in both directions. */
  readonly perMetre: number;
  readonly xOf: (alongM: number) => number;
  readonly yOf: (upM: number) => number;
};

/** A place of the house on the axes of the drawing, m. */
export type FieldPlace = { readonly along: number; readonly up: number };

const perMetreOf = (
  { left, right, bottom, top }: FieldView,
  { width, height }: FieldSize,
): number => Math.min(width / (right - left), height / (top - bottom));

/** The view as large as it goes into the field, in its middle. */
export const fieldScale = (view: FieldView, size: FieldSize): FieldScale => {
  const { left, right, bottom, top } = view;
  const perMetre = perMetreOf(view, size);
  const spareX = (size.width - (right - left) * perMetre) / 2;
  const spareY = (size.height - (top - bottom) * perMetre) / 2;
  return {
    ...size,
    perMetre,
    xOf: (alongM) => spareX + (alongM - left) * perMetre,
    yOf: (upM) => spareY + (top - upM) * perMetre,
  };
};

/** The view widened to the proportions of the field, so that its edges are the paper's. */
export const fitted = (view: FieldView, size: FieldSize): FieldView => {
  const { left, right, bottom, top } = view;
  const perMetre = perMetreOf(view, size);
  const spareX = (size.width / perMetre - (right - left)) / 2;
  const spareY = (size.height / perMetre - (top - bottom)) / 2;
  return {
    left: left - spareX,
    right: right + spareX,
    bottom: bottom - spareY,
    top: top + spareY,
  };
};

/** Nearer or farther about one place of the house, which stays where it is on the paper. */
export const zoomed = (
  { left, right, bottom, top }: FieldView,
  by: number,
  at: FieldPlace,
): FieldView => ({
  left: at.along + (left - at.along) / by,
  right: at.along + (right - at.along) / by,
  bottom: at.up + (bottom - at.up) / by,
  top: at.up + (top - at.up) / by,
});

export const panned = (
  { left, right, bottom, top }: FieldView,
  { along, up }: FieldPlace,
): FieldView => ({
  left: left + along,
  right: right + along,
  bottom: bottom + up,
  top: top + up,
});
