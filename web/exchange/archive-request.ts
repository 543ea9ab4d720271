/** What the thread that packs an archive is given, and what it says as it goes on. */
import type { ArchiveFile, LeftOut, Made, StoredText } from '#archive';
import type { JsonObject } from '../keeping/json.ts';

export type ShowAsked = {
  readonly house: JsonObject;
  readonly show: JsonObject;
  readonly state: JsonObject | null;
  readonly line: string;
};

export type PackRequest = {
  readonly made: Made;
  readonly documents: readonly StoredText[];
  /** Of which tables and drawings are made. */
  readonly shows: readonly ShowAsked[];
  /** What the server made. */
  readonly files: readonly ArchiveFile[];
  readonly leftOut: readonly LeftOut[];
};

export type PackAnswer =
  | { readonly is: 'part'; readonly done: number; readonly of: number }
  | {
      readonly is: 'packed';
      readonly bytes: Uint8Array<ArrayBuffer>;
      readonly files: number;
      readonly leftOut: readonly LeftOut[];
    };
