/** What the terminal says at the start: where the server is, as text and as a QR to scan. */
import type { Listening } from './listening.ts';
import { qrText } from './qr.ts';

/** A QR goes where a person looks at a screen; a log of lines has no use for it. */
export const startWords = (
  listening: Listening,
  { isTerminal }: { isTerminal: boolean },
): string => {
  const [first = '', ...others] = listening.urls();
  const [trust] = listening.trustUrls();
  const lines = [`Counterpoise is at ${first} (Ctrl-C stops it)`];
  if (listening.mode === 'loopback') return `${lines.join('\n')}\n`;
  for (const url of others) lines.push(`  also at ${url}`);
  if (first !== listening.ownUrl) lines.push(`  from this machine at ${listening.ownUrl}`);
  if (first === listening.ownUrl) {
    lines.push('This machine has no address in a network of the house: nothing else reaches it.');
  }
  const certificate = listening.certificate();
  if (listening.mode === 'plain') {
    lines.push(
      'Plain HTTP, for trials on a closed network: anybody on it can read and change what',
    );
    lines.push('is sent. Nothing can be signed off.');
  }
  if (trust !== undefined && certificate !== null) {
    lines.push(`A device that does not trust it yet begins at ${trust}`);
    lines.push(`Fingerprint of the authority (SHA-256): ${certificate.fingerprint}`);
  }
  if (isTerminal) lines.push('', qrText(trust ?? first));
  return `${lines.join('\n')}\n`;
};
