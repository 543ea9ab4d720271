import { type Command, Option } from 'commander';
import { checkArchive, makeArchive } from './archive-files.ts';
import type { ExitCode } from './exit-codes.ts';
import { exportWhat } from './export-drawing.ts';
import { importTable } from './import-table.ts';
import type { Voice } from './voice.ts';

const many = (one: string, before: readonly string[] = []): readonly string[] => [...before, one];

const table = new Option('--table <name>', 'read it as this, and not as its headings suggest');

export const addExchangeCommands = (
  program: Command,
  voice: Voice,
  ended: (code: ExitCode) => void,
): void => {
  program
    .command('export')
    .description('writes a table of a show for a spreadsheet, or a drawing of its house')
    .argument('<what>', 'schedule, takeoff, section or plan')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .addOption(
      new Option('--as <form>').choices(['csv', 'xlsx', 'svg', 'dxf']).makeOptionMandatory(),
    )
    .requiredOption('-o, --out <file>', 'the file to write')
    .option('--state <file>', 'how the sets stand, as recorded; for a drawing')
    .option('--at <moment>', 'for a drawing: trim:NAME or cue:COUNT; else as recorded')
    .addOption(
      new Option('--scale <n>', 'for SVG: 50 is 1:50').argParser((text) =>
        /^[1-9]\d{0,3}$/.test(text) ? Number(text) : Number.NaN,
      ),
    )
    .addOption(new Option('--unit <unit>', 'for DXF').choices(['mm', 'inch']))
    .action(async (what, house, show, options) =>
      ended(await exportWhat(voice, { what, house, show, ...options })),
    );
  addArchiveCommands(program, voice, ended);
  program
    .command('import')
    .description('reads a table into a show: says what would change, and writes only with --out')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .argument('<table>', 'file named .csv or .xlsx')
    .option('--sheet <name>', 'which sheet of a workbook')
    .addOption(table.choices(['schedule', 'takeoff']))
    .option('--heading <column=words>', 'read a column as if it had this heading', many)
    .option('--unit <column=unit>', 'the unit of the bare numbers in a column', many)
    .option('--known-by <words>', 'how new figures are known: "estimated; source: hire list"')
    .option('-o, --out <file>', 'write the show as it would be')
    .action(async (house, show, file, options) =>
      ended(await importTable(voice, { house, show, file, ...options })),
    );
};

const addArchiveCommands = (
  program: Command,
  voice: Voice,
  ended: (code: ExitCode) => void,
): void => {
  program
    .command('archive')
    .description('writes a house with a show as one file: documents, tables, drawings, hashes')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .option('--state <file>', 'how the sets stand, as recorded')
    .option('--by <name>', 'made by', 'not named')
    .requiredOption('-o, --out <file>', 'the file to write, named .zip')
    .action(async (house, show, options) =>
      ended(await makeArchive(voice, { house, show, ...options })),
    );
  program
    .command('archive-check')
    .description('looks whether an archive is whole, and writes its documents with --out')
    .argument('<file>', 'an archive of this program')
    .option('-o, --out <folder>', 'a folder for the newest revision of each document')
    .action(async (file, options) => ended(await checkArchive(voice, { file, ...options })));
};
