/** What others can open of one show: its tables, and the house at every moment as drawings. */
import { strToU8 } from 'fflate';
import { assess, type HouseMoment, recordedMoment, trimMoment, trimNames } from '#assessment';
import type { ShowDocument } from '#documents';
import {
  type DrawingKind,
  drawingFile,
  dxfFile,
  svgFile,
  tradeWord,
  unitWordsOf,
  usualScale,
  usualUnit,
} from '#drawings';
import { tablesOut, writeCsv, writeXlsx } from '#exchange';
import type { House } from '#house';
import type { HouseState } from '#state';
import { showFolder, slug } from './file-names.ts';
import type { ArchiveFile } from './manifest.ts';

export type ShowSource = {
  readonly house: House;
  readonly show: ShowDocument;
  readonly state: HouseState | null;
  /** Which revisions, when and by whom; for the drawings. */
  readonly line: string;
};

const tables = (folder: string, { house, show }: ShowSource): readonly ArchiveFile[] => {
  const { schedule, takeoff } = tablesOut(house, show);
  return [
    { path: `${folder}/schedule.csv`, bytes: strToU8(writeCsv(schedule)) },
    { path: `${folder}/schedule.xlsx`, bytes: writeXlsx(schedule) },
    { path: `${folder}/take-off.csv`, bytes: strToU8(writeCsv(takeoff)) },
    { path: `${folder}/take-off.xlsx`, bytes: writeXlsx(takeoff) },
  ];
};

type Named = { readonly name: string; readonly words: string; readonly moment: HouseMoment };

const KINDS: readonly DrawingKind[] = ['section', 'plan'];

const drawings = (folder: string, source: ShowSource): readonly ArchiveFile[] => {
  const { house, show, state, line } = source;
  const { sets } = assess(house, show.show, state);
  const taken = new Set<string>();
  const trims = trimNames(sets).map((trim): Named => {
    const name = slug(`trim ${trim}`, taken);
    taken.add(name);
    const words = `${tradeWord(house, 'trim')} ${trim}`;
    return { name, words, moment: trimMoment(sets, trim) };
  });
  const recorded: Named = {
    name: 'as-recorded',
    words: 'as recorded',
    moment: recordedMoment(sets),
  };
  const unit = usualUnit(house);
  return [recorded, ...trims].flatMap(({ name, words, moment }) =>
    KINDS.flatMap((kind) => {
      const about = [`${show.show.name}, ${words}.`, line];
      const options = { scale: usualScale(house), lines: about, arbors: false };
      const subject = { house, sets, moment };
      const model = [...about, `Units of the model: ${unitWordsOf(unit)}.`];
      const forDxf = { ...options, lines: model, arbors: true };
      const path = `${folder}/${kind}-${name}`;
      return [
        { path: `${path}.svg`, bytes: strToU8(svgFile(drawingFile(kind, subject, options))) },
        {
          path: `${path}-${unit}.dxf`,
          bytes: strToU8(dxfFile(drawingFile(kind, subject, forDxf), unit)),
        },
      ];
    }),
  );
};

/** Schedule and take-off as CSV and XLSX; section and plan as recorded and at each trim. */
export const showFiles = (source: ShowSource): readonly ArchiveFile[] => {
  const folder = showFolder(source.house.id, source.show.show.id);
  return [...tables(folder, source), ...drawings(folder, source)];
};
