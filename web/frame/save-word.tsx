/** Whether the server has what the page shows, in words. */
import { unreachable } from '#outcome';
import { phrase, type Voice } from '#texts';
import type { Kept } from '../keeping/kept.ts';
import { useTell, useVoice } from '../language/use-tell.ts';

export const saveWords = ({ save, server }: Kept, voice: Voice): string => {
  switch (save.is) {
    case 'saved':
      return phrase(voice, 'saved, revision {revision}', { revision: server.revision });
    case 'waiting':
      return phrase(voice, 'not saved yet');
    case 'sending':
      return phrase(voice, 'not saved yet: on its way');
    case 'unreached':
      return phrase(voice, 'server not reached: edits kept on this device');
    case 'conflict':
      return phrase(voice, 'not saved: somebody else has saved since');
    case 'refused':
      return phrase(voice, 'not saved: the server refused it');
    default:
      return unreachable(save);
  }
};

type SaveWordProps = { readonly kept: Kept; readonly keptOnDevice: boolean };

export const SaveWord = ({ kept, keptOnDevice }: SaveWordProps) => {
  const tell = useTell();
  const voice = useVoice();
  const isSettled = kept.save.is === 'saved';
  return (
    <p className="save-word" role="status" data-save={kept.save.is}>
      {saveWords(kept, voice)}
      {isSettled || keptOnDevice ? '' : tell('; this device keeps no copy, do not close the page')}
    </p>
  );
};
