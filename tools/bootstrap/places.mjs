/** Where things are in a checkout. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
export const COMMANDS = join(ROOT, 'tools', 'commands');
export const RUNTIME = join(ROOT, '.runtime');
