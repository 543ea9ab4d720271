/** One file at a time: chosen, being read, read, or given up. */
import { useEffect, useRef, useState } from 'react';
import type { Kept } from '../keeping/kept.ts';
import { useKeeperState } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import type { Found } from './file-reading.ts';
import { type Given, READ_SECONDS_MAX, startReading } from './reader.ts';

export type Reading =
  | { readonly is: 'none' }
  | { readonly is: 'reading'; readonly file: string; readonly done: number; readonly of: number }
  | { readonly is: 'ended'; readonly file: string; readonly why: string }
  /** `at` tells one reading from the next, of the same file too. */
  | { readonly is: 'found'; readonly found: Found; readonly at: number };

const isHouse = ({ kind }: Kept): boolean => kind === 'house';

export const useReading = () => {
  const tell = useTell();
  const state = useKeeperState();
  const documents = state.phase === 'open' ? Object.values(state.documents) : [];
  const [reading, setReading] = useState<Reading>({ is: 'none' });
  const [fault, setFault] = useState<Error | null>(null);
  const ending = useRef<() => void>(() => {});
  const count = useRef(0);
  useEffect(() => () => ending.current(), []);
  if (fault !== null) throw fault;
  const begin = (given: Given): void => {
    ending.current();
    const file = given.name;
    count.current += 1;
    const at = count.current;
    setReading({ is: 'reading', file, done: 0, of: 0 });
    const houses = documents.filter(isHouse).map(({ document }) => document);
    ending.current = startReading(given, houses, {
      onPart: (done, of) => setReading({ is: 'reading', file, done, of }),
      onFound: (found) => setReading({ is: 'found', found, at }),
      onTooLong: () =>
        setReading({
          is: 'ended',
          file,
          why: tell('It was not read within {seconds} s.', { seconds: READ_SECONDS_MAX }),
        }),
      onFault: setFault,
    });
  };
  const cancel = (): void => {
    ending.current();
    if (reading.is === 'reading') {
      setReading({ is: 'ended', file: reading.file, why: tell('The reading was given up.') });
    }
  };
  return { reading, begin, cancel };
};
