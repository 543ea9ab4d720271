/** Ids made on this device. Random values are there without HTTPS too; `randomUUID` is not. */
const KEY = 'counterpoise.device';

export const newId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');

/** The same as long as this browser keeps anything; a device that keeps nothing is a new one. */
export const deviceId = (): string => {
  try {
    const kept = localStorage.getItem(KEY);
    if (kept !== null && /^[0-9a-f]{32}$/.test(kept)) return kept;
    const made = newId();
    localStorage.setItem(KEY, made);
    return made;
  } catch {
    return newId();
  }
};
