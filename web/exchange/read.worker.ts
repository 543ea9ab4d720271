/** A file read on a thread of its own, so that the page answers, and the reading can be ended. */
import { readFile } from './file-reading.ts';
import type { ReadAnswer, ReadRequest } from './reader.ts';

const post = (answer: ReadAnswer): void => self.postMessage(answer);

self.addEventListener('message', ({ data }: MessageEvent<ReadRequest>) => {
  const { file, bytes, houses } = data;
  const onPart = (done: number, of: number): void => post({ is: 'part', done, of });
  post({ is: 'found', found: readFile(file, new Uint8Array(bytes), houses, onPart) });
});
