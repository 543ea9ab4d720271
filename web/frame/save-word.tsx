/** Whether the server has what the page shows, in words. */
import { unreachable } from '#outcome';
import type { Kept } from '../keeping/kept.ts';

export const saveWords = ({ save, server }: Kept): string => {
  switch (save.is) {
    case 'saved':
      return `saved, revision ${server.revision}`;
    case 'waiting':
      return 'not saved yet';
    case 'sending':
      return 'not saved yet: on its way';
    case 'unreached':
      return 'server not reached: edits kept on this device';
    case 'conflict':
      return 'not saved: somebody else has saved since';
    case 'refused':
      return 'not saved: the server refused it';
    default:
      return unreachable(save);
  }
};

type SaveWordProps = { readonly kept: Kept; readonly keptOnDevice: boolean };

export const SaveWord = ({ kept, keptOnDevice }: SaveWordProps) => {
  const isSettled = kept.save.is === 'saved';
  return (
    <p className="save-word" role="status" data-save={kept.save.is}>
      {saveWords(kept)}
      {isSettled || keptOnDevice ? '' : '; this device keeps no copy, do not close the page'}
    </p>
  );
};
