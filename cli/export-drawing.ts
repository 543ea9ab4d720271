import {
  assess,
  cueMoment,
  type HouseMoment,
  recordedMoment,
  type SetAssessment,
  trimMoment,
  trimNames,
} from '#assessment';
import {
  type DrawingKind,
  type DxfUnit,
  drawingFile,
  dxfFile,
  svgFile,
  unitWordsOf,
  usualScale,
  usualUnit,
} from '#drawings';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { localMoment } from '#print';
import type { Show } from '#show';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { exportTable, wrote } from './export-table.ts';
import { openDocuments } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type ExportOptions = {
  readonly what: string;
  readonly house: string;
  readonly show: string;
  readonly as: 'csv' | 'xlsx' | 'svg' | 'dxf';
  readonly out: string;
  readonly state?: string;
  readonly at?: string;
  readonly scale?: number;
  readonly unit?: DxfUnit;
};

const refused = (
  voice: Voice,
  name: keyof typeof COMMAND_REFUSALS,
  found: string,
  accepted: string,
): ExitCode => {
  const { code } = COMMAND_REFUSALS[name];
  sayRefusals(voice, 'export', [{ code, path: '', found, accepted }]);
  return EXIT.badInput;
};

/** A table or a drawing; what was asked for in a form that it does not have is refused. */
export const exportWhat = async (voice: Voice, options: ExportOptions): Promise<ExitCode> => {
  const { what, as } = options;
  switch (what) {
    case 'schedule':
    case 'takeoff':
      return as === 'csv' || as === 'xlsx'
        ? exportTable(voice, { ...options, table: what, as })
        : refused(voice, 'otherForm', `${what} as ${as}`, 'csv or xlsx');
    case 'section':
    case 'plan':
      return as === 'svg' || as === 'dxf'
        ? exportDrawing(voice, { ...options, kind: what, as })
        : refused(voice, 'otherForm', `${what} as ${as}`, 'svg or dxf');
    default: {
      const accepted = 'schedule, takeoff, section or plan';
      return refused(voice, 'noTable', JSON.stringify(what), accepted);
    }
  }
};

type Moment = { readonly moment: HouseMoment; readonly words: string };

const noMoment = (at: string, accepted: string): Result<Moment, Refusal> =>
  fail({ code: COMMAND_REFUSALS.noMoment.code, path: '--at', found: JSON.stringify(at), accepted });

const momentOf = (
  at: string | undefined,
  sets: readonly SetAssessment[],
  show: Show,
): Result<Moment, Refusal> => {
  if (at === undefined) return ok({ moment: recordedMoment(sets), words: 'as recorded' });
  const [, of, name = ''] = /^(trim|cue):(.+)$/s.exec(at) ?? [];
  const trims = trimNames(sets);
  if (of === 'trim' && trims.includes(name)) {
    return ok({ moment: trimMoment(sets, name), words: `trim ${name}` });
  }
  const done = Number(name);
  if (of === 'cue' && /^\d{1,4}$/.test(name) && done <= show.cues.length) {
    return ok({ moment: cueMoment(sets, show.cues, done), words: `after ${done} cues` });
  }
  const cues = `cue:0 to cue:${show.cues.length}`;
  return noMoment(at, [...trims.map((trim) => `trim:${trim}`), cues].join(', '));
};

type DrawingOptions = Omit<ExportOptions, 'as' | 'what'> & {
  readonly kind: DrawingKind;
  readonly as: 'svg' | 'dxf';
};

const exportDrawing = async (voice: Voice, options: DrawingOptions): Promise<ExitCode> => {
  const { kind, as, out, at } = options;
  if (Number.isNaN(options.scale)) {
    return refused(voice, 'otherForm', '--scale', 'a whole number from 1 to 9999: 50 is 1:50');
  }
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const { house } = opened.house;
  const { show } = opened.show;
  const { sets } = assess(house, show, opened.state?.state ?? null);
  const moment = momentOf(at, sets, show);
  if (!moment.ok) {
    sayRefusals(voice, 'export', [moment.error]);
    return EXIT.badInput;
  }
  const unit = options.unit ?? usualUnit(house);
  const scale = options.scale ?? usualScale(house);
  const lines = [
    `${show.name}, ${moment.value.words}.`,
    `From files, ${localMoment(new Date())}.`,
    ...(as === 'dxf' ? [`Units of the model: ${unitWordsOf(unit)}.`] : []),
  ];
  const subject = { house, sets, moment: moment.value.moment };
  const file = drawingFile(kind, subject, { scale, lines, arbors: as === 'dxf' });
  const text = as === 'svg' ? svgFile(file) : dxfFile(file, unit);
  if (!(await wrote(voice, out, text))) return EXIT.badInput;
  const how = as === 'svg' ? `paper at 1:${scale}` : `in ${unitWordsOf(unit)}`;
  voice.out(`${out}: ${kind}, ${moment.value.words}, ${how}\n`);
  return EXIT.clear;
};
