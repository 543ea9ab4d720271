const ISO =
  /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,9}))?)?(Z|[+-]\d{2}:\d{2})$/;

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

const daysIn = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** Leap days before the first of January of a year, counted from year 0. */
const leapDaysBefore = (year: number): number => {
  const last = year - 1;
  return Math.floor(last / 4) - Math.floor(last / 100) + Math.floor(last / 400);
};

const daysBefore = (year: number, month: number): number => {
  let days = (year - 1970) * 365 + leapDaysBefore(year) - leapDaysBefore(1970);
  for (let passed = 1; passed < month; passed += 1) days += daysIn(year, passed);
  return days;
};

const zoneMs = (zone: string): number | null => {
  if (zone === 'Z') return 0;
  const [hours, minutes] = [Number(zone.slice(1, 3)), Number(zone.slice(4, 6))];
  if (hours > 23 || minutes > 59) return null;
  return (zone.startsWith('-') ? -1 : 1) * (hours * HOUR_MS + minutes * MINUTE_MS);
};

/**
 * The moment of an ISO 8601 date and time with its zone, in milliseconds since 1970; null where
 * the text is no such moment. It is read here since the rules have no clock and no calendar of
 * the machine. Without a zone a moment is not known, and is not guessed.
 *
 * Source  ISO 8601 extended format as profiled by RFC 3339; Gregorian leap years
 */
export const momentMs = (text: string): number | null => {
  const parts = ISO.exec(text);
  if (parts === null) return null;
  const field = (place: number): number => Number(parts[place] ?? 0);
  const [year, month, day] = [field(1), field(2), field(3)];
  const [hour, minute, second] = [field(4), field(5), field(6)];
  const offsetMs = zoneMs(parts[8] ?? '');
  const isDate = month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
  if (!isDate || hour > 23 || minute > 59 || second > 59 || offsetMs === null) return null;
  const days = daysBefore(year, month) + day - 1;
  const fractionMs = Number(`0.${parts[7] ?? '0'}`) * 1000;
  const localMs = days * DAY_MS + hour * HOUR_MS + minute * MINUTE_MS + second * 1000 + fractionMs;
  return localMs - offsetMs;
};
