/** Height in the house against y on the paper; one scale for drawings that stand side by side. */
export type HeightScale = {
  /** y of the stage deck, height 0. */
  readonly deckAt: number;
  /** Units of the drawing for one metre of height. */
  readonly perMetre: number;
};

export const heightToY = ({ deckAt, perMetre }: HeightScale, heightM: number): number =>
  deckAt - heightM * perMetre;

/** The scale on which `lowM` lies at y = `bottom` and `highM` at y = `top`. */
export const fitHeights = ({
  lowM,
  highM,
  top,
  bottom,
}: {
  readonly lowM: number;
  readonly highM: number;
  readonly top: number;
  readonly bottom: number;
}): HeightScale => {
  const perMetre = (bottom - top) / (highM - lowM);
  return { perMetre, deckAt: bottom + lowM * perMetre };
};
