import { useEffect } from 'react';
import { useKeeper } from '../keeping/use-keeper.ts';
import { isTyping } from './is-typing.ts';

/** Control or Command with Z takes back; with Shift, or with Y, does again. */
export const useUndoKeys = (ids: readonly string[]): void => {
  const keeper = useKeeper();
  const key = ids.join(' ');
  useEffect(() => {
    const documents = key.split(' ');
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const letter = event.key.toLowerCase();
      if (letter !== 'z' && letter !== 'y') return;
      event.preventDefault();
      if (letter === 'y' || event.shiftKey) keeper.redo(documents);
      else keeper.undo(documents);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [keeper, key]);
};
