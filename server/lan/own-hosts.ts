/** Whether a request asks for this server by a name of its own, and comes from one of its pages. */
import type { Listening } from './listening.ts';

/** Without the port, since a proxy or a forwarded port may show another. */
const hostOf = (host: string): string | null =>
  /^(\[[0-9a-f:]+\]|[a-z0-9.-]+)(:\d{1,5})?$/i.exec(host)?.[1]?.toLowerCase() ?? null;

/**
 * A foreign name can be made to lead to this address (DNS rebinding); its pages would then be of
 * the same origin as what is asked here. So a name that is not ours is refused.
 */
export const isOwnHost = ({ hosts }: Listening, host: string | undefined): boolean => {
  const asked = host === undefined ? null : hostOf(host);
  // A name may be written with the dot of the root at its end.
  return asked !== null && hosts().includes(asked.replace(/\.$/, ''));
};

export const isSameOrigin = (
  { scheme }: Listening,
  origin: string,
  host: string | undefined,
): boolean => origin === `${scheme}://${host}`;
