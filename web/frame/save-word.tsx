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
    case 'held':
      return phrase(voice, 'not recorded: the server did not answer');
    case 'conflict':
      return phrase(voice, 'not saved: somebody else has saved since');
    case 'refused':
      return phrase(voice, 'not saved: the server refused it');
    default:
      return unreachable(save);
  }
};

/** What needs a person most comes first. */
const FIRST_SAID = [
  'refused',
  'conflict',
  'held',
  'unreached',
  'sending',
  'waiting',
  'saved',
] as const;

type SaveWordProps = {
  readonly show: Kept;
  /** What else an edit on the screen may have changed. */
  readonly others: readonly (Kept | null)[];
  readonly keptOnDevice: boolean;
};

/** One word for all that the page shows: where the house is not saved, nothing reads as saved. */
export const SaveWord = ({ show, others, keptOnDevice }: SaveWordProps) => {
  const tell = useTell();
  const voice = useVoice();
  const all = [show, ...others.filter((each) => each !== null)];
  const is = FIRST_SAID.find((each) => all.some(({ save }) => save.is === each));
  const kept = all.find(({ save }) => save.is === is) ?? show;
  const isSettled = kept.save.is === 'saved';
  return (
    <p className="save-word" role="status" data-save={kept.save.is}>
      {saveWords(kept, voice)}
      {isSettled || keptOnDevice ? '' : tell('; this device keeps no copy, do not close the page')}
    </p>
  );
};
