/** Where a key leads from a moment; undefined for other keys, null closes. */
export const momentFor = (
  key: string,
  here: number | null,
  count: number,
): number | null | undefined => {
  const last = count - 1;
  switch (key) {
    case 'ArrowRight':
      return here === null ? 0 : Math.min(last, here + 1);
    case 'ArrowLeft':
      return here === null ? last : Math.max(0, here - 1);
    case 'Home':
      return 0;
    case 'End':
      return last;
    case 'Escape':
      return here === null ? undefined : null;
    default:
      return undefined;
  }
};
