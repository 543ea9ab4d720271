/** The streams that are open: who is told, and who is ended because they take or may no more. */

/** One open stream, as far as the hub sees it. */
export type Reader = {
  readonly write: (text: string) => void;
  /** Bytes that were written and that the network has not taken yet. */
  readonly waitingBytes: () => number;
  /** False once the right of who opened it has ended. */
  readonly mayRead: () => boolean;
  readonly end: () => void;
};

/** Half a minute of a busy house; who is further behind is slower than the house. */
const WAITING_MAX_BYTES = 256 * 1024;
/** One is enough where tabs agree; the rest is for those that could not, or are half open. */
const STREAMS_OF_DEVICE = 4;
const STREAMS_OF_ALL = 1000;

type Stream = { readonly reader: Reader; readonly device: string | null };

export class Streams {
  readonly #open = new Set<Stream>();
  readonly #lastWords: string;

  /** `lastWords` are told to a stream that is ended for one that is newer. */
  constructor(lastWords: string) {
    this.#lastWords = lastWords;
  }

  count = (): number => this.#open.size;

  /** The answer takes it out again. */
  add = (reader: Reader, device: string | null): (() => void) => {
    const stream = { reader, device };
    this.#open.add(stream);
    return () => void this.#open.delete(stream);
  };

  tell = (text: string): void => {
    for (const stream of [...this.#open]) {
      if (stream.reader.waitingBytes() > WAITING_MAX_BYTES) this.#end(stream);
      else stream.reader.write(text);
    }
  };

  /** Who may no longer read hears nothing more; a new stream is refused to them. */
  checkRights = (): void => {
    for (const stream of [...this.#open]) if (!stream.reader.mayRead()) this.#end(stream);
  };

  /** The oldest of a device goes first: the newest is the one that somebody looks at. */
  makeRoomFor = (device: string | null): void => {
    const own = [...this.#open].filter((each) => device !== null && each.device === device);
    if (own.length >= STREAMS_OF_DEVICE) this.#dismiss(own[0]);
    const [first] = this.#open;
    if (this.#open.size >= STREAMS_OF_ALL) this.#dismiss(first);
  };

  endAll = (): void => {
    for (const stream of [...this.#open]) this.#end(stream);
  };

  #dismiss = (stream: Stream | undefined): void => {
    if (stream === undefined) return;
    stream.reader.write(this.#lastWords);
    this.#end(stream);
  };

  #end = (stream: Stream): void => {
    this.#open.delete(stream);
    stream.reader.end();
  };
}
