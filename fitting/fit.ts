import { assess } from '#assessment';
import { readShowValue } from '#documents';
import type { Finding } from '#findings';
import { judge } from '#rules';
import { questionsFor } from './ask.ts';
import { houseDiffers, setDiffers } from './differs.ts';
import { newFindings } from './fails.ts';
import { fittedShow, type Named } from './fitted-show.ts';
import { freeIn, type Proposal } from './propose.ts';
import type { Fit, FitAsked, Mapping, PieceFit } from './types.ts';

type Judged = {
  readonly findings: readonly Finding[];
  readonly refusals: Fit['refusals'];
};

/** The plan is judged without the record, which speaks of what hangs there now. */
const judgedAs = (asked: FitAsked, document: Fit['document']): Judged => {
  const { house } = asked.to;
  const read = readShowValue(document, house);
  if (!read.ok) return { findings: [], refusals: read.error };
  const { show } = read.value;
  const assessment = assess(house, show, null);
  return {
    findings: judge(house, show, null, assessment, clockOf(asked)),
    refusals: [],
  };
};

const clockOf = ({ nowMs }: FitAsked): { nowMs?: number } => (nowMs === undefined ? {} : { nowMs });

const judgedHere = (asked: FitAsked): readonly Finding[] => {
  const { house, show } = asked.from;
  return judge(house, show, null, assess(house, show, null), clockOf(asked));
};

/**
 * A show on the sets of another house, by a mapping: what differs, what no longer works, what to
 * ask, and the new document. The document is the one that is judged, so that what is saved is what
 * was looked at.
 */
export const fitShow = (asked: FitAsked, { mapping, bars }: Proposal, named: Named): Fit => {
  const { from, to } = asked;
  const { document, changes } = fittedShow(asked, mapping, named);
  const judged = judgedAs(asked, document);
  const fails = newFindings(judgedHere(asked), judged.findings, mapping);
  const pieces = from.show.hangs.map(({ set, name }): PieceFit => {
    const to = mapping[set] ?? null;
    return {
      from: set,
      name,
      to,
      ...betweenSets(asked, set, to),
      changes: changes.get(set) ?? [],
      fails: fails.ofPiece.get(set) ?? [],
      bars: to === null ? (bars.get(set) ?? []) : [],
    };
  });
  return {
    mapping,
    pieces,
    differs: houseDiffers(from.house, to.house),
    fails: fails.ofHouse,
    questions: questionsFor(asked, mapping),
    withheld: freeIn(asked).withheld,
    document,
    refusals: judged.refusals,
  };
};

const betweenSets = (
  { from, to }: FitAsked,
  set: string,
  target: string | null,
): Pick<PieceFit, 'shiftM' | 'differs'> => {
  const old = from.house.lineSets.find(({ id }) => id === set);
  const fresh = to.house.lineSets.find(({ id }) => id === target);
  if (old === undefined || fresh === undefined) return { shiftM: null, differs: [] };
  const shiftM = old.y.known && fresh.y.known ? fresh.y.value - old.y.value : null;
  return { shiftM, differs: setDiffers(old, fresh) };
};

/** A mapping with one piece put elsewhere by hand; whatever stood there hangs nowhere. */
export const remapped = (mapping: Mapping, from: string, to: string | null): Mapping =>
  Object.fromEntries(
    Object.entries(mapping).map(([piece, set]) => {
      if (piece === from) return [piece, to];
      return [piece, set === to ? null : set];
    }),
  );
