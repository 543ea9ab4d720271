/** The printer's own clock as it hangs on the wall: ISO with the offset from Greenwich. */
const two = (number: number): string => String(Math.trunc(number)).padStart(2, '0');

/** `2026-11-25T18:55:00+01:00`. A sheet prints the wall's time, not that of Greenwich. */
export const localMoment = (date: Date): string => {
  const offsetMinutes = -date.getTimezoneOffset();
  const sign = offsetMinutes < 0 ? '-' : '+';
  const size = Math.abs(offsetMinutes);
  const local = new Date(date.getTime() + offsetMinutes * 60_000).toISOString().slice(0, 19);
  return `${local}${sign}${two(size / 60)}:${two(size % 60)}`;
};
