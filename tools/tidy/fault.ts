/** What a check finds: where, what it saw, and what is wanted instead. */
export type Fault = {
  readonly file: string;
  readonly line: number;
  readonly what: string;
  readonly wanted: string;
};

/** A file of the project as the checks see it: its path from the root, and its text. */
export type Source = { readonly path: string; readonly text: string };

/** One idea that can be broken. Given files, so that a test can give it three lines of text. */
export type Check = (sources: readonly Source[]) => readonly Fault[];

export const printed = ({ file, line, what, wanted }: Fault): string =>
  `${file}:${line} ${what}, ${wanted}`;
