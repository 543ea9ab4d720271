/** The balance card of a set, made here from the same description as the paper. */
import { useMemo } from 'react';
import { type Block, type Sheet, sheetOf } from '#sheets';
import { phrase } from '#texts';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { useWork } from '../reckoning/use-work.ts';
import { SAID_ABOVE } from '../self-check/screens.ts';

export const useCard = (set: string): Sheet | undefined => {
  const { house, show, state, assessment, findings, kept, nowMs } = useWork();
  const revision = phrase(house, 'house {revision}, show {revision2}', {
    revision: kept.house.server.revision,
    revision2: kept.show.server.revision,
  });
  return useMemo(() => {
    const printedAt = new Date(nowMs).toISOString();
    const stamp = { revision, printedAt, printedBy: nameOnDevice() };
    const selfCheck = SAID_ABOVE;
    const context = { house, show, state, assessment, findings, stamp, selfCheck };
    return sheetOf(context, `balance-card/${set}`);
  }, [house, show, state, assessment, findings, revision, nowMs, set]);
};

/** The first block of a kind, wherever it stands on the sheet. */
export const findBlock = <K extends Block['kind']>(
  blocks: readonly Block[],
  kind: K,
): Extract<Block, { kind: K }> | null => {
  for (const block of blocks) {
    if (block.kind === kind) return block as Extract<Block, { kind: K }>;
    const inner = block.kind === 'columns' ? findBlock(block.columns.flat(), kind) : null;
    if (inner !== null) return inner;
  }
  return null;
};
