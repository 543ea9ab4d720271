/**
 * What the server said last, kept on this device for when it is not reached. A copy has an age and
 * is shown with it: nobody takes it for what stands now.
 */
import type { Databases, Stored } from './server.ts';

/** By both clocks: the server's tells a person when, the device's tells how long ago. */
export type Moment = { readonly serverMs: number; readonly deviceMs: number };

export type Copy = {
  readonly databases: Databases;
  readonly documents: readonly Stored[];
  /** When all of it was read; a document that this page saved since is newer. */
  readonly read: Moment;
};

export type CopyBox = {
  /** The copy that was read last, of whichever house; null where there is none. */
  readonly last: () => Promise<Copy | null>;
  /** In its own time; a device that takes none has none to show. */
  readonly keep: (copy: Copy) => void;
};

/** An age is said in minutes. */
const CONFIRM_MS = 60_000;

/** The copy of one page, brought up to what the page hears. */
export class HeardCopy {
  readonly #parts: { readonly copies: CopyBox; readonly moment: () => Moment };
  #copy: Copy | null = null;
  #isAsked = false;

  constructor(parts: { readonly copies: CopyBox; readonly moment: () => Moment }) {
    this.#parts = parts;
  }

  /** All of it, read just now. */
  whole = (databases: Databases, documents: readonly Stored[]): void => {
    this.#isAsked = false;
    this.#keep({ databases, documents, read: this.#parts.moment() });
  };

  /** Something newer may be there: until it is read, nothing that is here is confirmed. */
  asked = (): void => {
    this.#isAsked = true;
  };

  /** The same is what stands now; written down only now and then. */
  confirm = (): void => {
    const read = this.#parts.moment();
    if (this.#copy === null || this.#isAsked) return;
    if (read.deviceMs - this.#copy.read.deviceMs >= CONFIRM_MS) this.#keep({ ...this.#copy, read });
  };

  /** What this page has saved; the age of all else stays what it was. */
  saved = (stored: Stored): void => {
    if (this.#copy === null) return;
    const others = this.#copy.documents.filter(({ id }) => id !== stored.id);
    this.#keep({ ...this.#copy, documents: [...others, stored] });
  };

  #keep = (copy: Copy): void => {
    this.#copy = copy;
    this.#parts.copies.keep(copy);
  };
}
