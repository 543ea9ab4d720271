import { type Command, Option } from 'commander';
import type { ExitCode } from './exit-codes.ts';
import { exportTable } from './export-table.ts';
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
    .description('writes the schedule or the take-off of a show as a table for a spreadsheet')
    .argument('<table>', 'schedule or takeoff')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .addOption(new Option('--as <form>').choices(['csv', 'xlsx']).makeOptionMandatory())
    .requiredOption('-o, --out <file>', 'the file to write')
    .action(async (name, house, show, options) =>
      ended(await exportTable(voice, { table: name, house, show, ...options })),
    );
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
