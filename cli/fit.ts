import { type Fit, type FitAsked, fitShow, propose } from '#fitting';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { wrote } from './export-table.ts';
import { fitText } from './fit-text.ts';
import { openDocuments, openHouseAndState } from './open-documents.ts';
import { progress, sayRefusals, type Voice } from './voice.ts';

export type FitOptions = {
  /** The house that the show leaves, and the show. */
  readonly from: string;
  readonly show: string;
  /** The house that it goes to, and what is recorded there. */
  readonly house: string;
  readonly state?: string;
  readonly id?: string;
  readonly name?: string;
  readonly out?: string;
  readonly json?: boolean;
};

const isGrave = ({ fails, pieces }: Fit): boolean =>
  [...fails, ...pieces.flatMap((piece) => piece.fails)].some(({ level }) => level === 'stop');

/** Fits a show to another house: what differs, what no longer works, what to ask. */
export const fitToHouse = async (voice: Voice, options: FitOptions): Promise<ExitCode> => {
  const here = { house: options.from, show: options.show, state: undefined };
  const from = await openDocuments(voice, here);
  const to = await openHouseAndState(voice, options);
  if (from === null || to === null) return EXIT.badInput;
  const asked: FitAsked = {
    from: { house: from.house.house, show: from.show.show, document: from.show.raw },
    to: { house: to.house.house, state: to.state?.state ?? null },
    nowMs: Date.now(),
  };
  const said = progress(voice, 'pieces tried on every set', asked.from.show.hangs.length);
  const proposal = propose(asked, said);
  const { id, name } = asked.from.show;
  const found = fitShow(asked, proposal, { id: options.id ?? id, name: options.name ?? name });
  if (found.refusals.length > 0) {
    sayRefusals(voice, 'the fitted show', found.refusals);
    return EXIT.fault;
  }
  if (options.out !== undefined) {
    const text = `${JSON.stringify(found.document, null, 2)}\n`;
    if (!(await wrote(voice, options.out, text))) return EXIT.badInput;
  }
  voice.out(options.json === true ? jsonOf(found) : fitText(found, asked));
  return isGrave(found) ? EXIT.stop : EXIT.clear;
};

const jsonOf = ({ document: _document, refusals: _none, ...found }: Fit): string =>
  `${JSON.stringify(found, null, 2)}\n`;
