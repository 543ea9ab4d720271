/** The compiler over the three zones of the house: pure, Node and browser. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, runNode, TOOLS } from './program.ts';

export const ZONES = ['pure', 'node', 'browser'] as const;
export type Zone = (typeof ZONES)[number];

/** A zone without a file makes the compiler fail; the browser zone has none until web/ exists. */
const isBuilt = (zone: Zone): boolean => zone !== 'browser' || existsSync(join(ROOT, 'web'));

/** The compiler's faults, empty when there are none. */
export const typecheck = async (zone: Zone): Promise<string> => {
  if (!isBuilt(zone)) return '';
  const args = [TOOLS.tsc, '--noEmit', '--pretty', 'false', '-p', `tsconfig.${zone}.json`];
  const { code, output } = await runNode(args, { shown: false });
  return code === 0 ? '' : output || `the compiler ended with ${code}`;
};
