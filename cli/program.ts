import { Command, CommanderError, Option } from 'commander';
import { LANGUAGES } from '#texts';
import { check } from './check.ts';
import { compute } from './compute.ts';
import { addDiffCommand } from './diff.ts';
import { addExchangeCommands } from './exchange-commands.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { addFitCommand } from './fit-command.ts';
import { addOrderCommands } from './order-commands.ts';
import { printSchema } from './schema.ts';
import { selfCheck } from './self-check.ts';
import type { Voice } from './voice.ts';
import { writeSheets } from './write-sheets.ts';

const CAUTION = `
It advises and records. It commands nothing and certifies nothing. Local codes, the rules of the
house and competent persons come first. Flying people is out of scope.

Exit codes: 0 nothing at stop level, 1 a finding at stop level, 2 bad input, 3 a fault of the
program.`;

/** Runs one command line and returns its exit code. Nothing else here ends the process. */
export const run = async (args: readonly string[], voice: Voice): Promise<ExitCode> => {
  let code: ExitCode = EXIT.clear;
  const program = buildProgram(voice, (ended) => {
    code = ended;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (fault) {
    if (fault instanceof CommanderError) return fault.exitCode === 0 ? EXIT.clear : EXIT.badInput;
    voice.err(`A fault of the program: ${fault instanceof Error ? fault.message : fault}\n`);
    return EXIT.fault;
  }
};

const buildProgram = (voice: Voice, ended: (code: ExitCode) => void): Command => {
  const program = new Command('counterpoise')
    .description('Weights, balance, orders of work and sheets of a manual counterweight fly house.')
    .addHelpText('after', CAUTION)
    .showHelpAfterError('(counterpoise --help shows what there is)')
    .configureOutput({ writeOut: voice.out, writeErr: voice.err })
    .exitOverride();
  addCommands(program, voice, ended);
  addOrderCommands(program, voice, ended);
  addFitCommand(program, voice, ended);
  addExchangeCommands(program, voice, ended);
  addDiffCommand(program, voice, ended);
  for (const command of program.commands)
    command.exitOverride().configureOutput({ writeOut: voice.out, writeErr: voice.err });
  return program;
};

const state = new Option('--state <file>', 'how the sets stand, as recorded');
const json = new Option('--json', 'answer as JSON');
const paper = new Option('--paper <size>').choices(['letter', 'a4']).default('letter');
const language = new Option('--language <tag>', 'of the sheets; else that of the house').choices(
  LANGUAGES.map((each) => each.language),
);
const by = new Option('--by <name>', 'printed by').default('not named');

const addCommands = (program: Command, voice: Voice, ended: (code: ExitCode) => void): void => {
  program
    .command('check')
    .description('works every set of a show in a house, and says what a person must look at')
    .argument('<house>', 'house document (JSON; - reads standard input)')
    .argument('<show>', 'show document')
    .addOption(state)
    .addOption(json)
    .option('--set <id>', 'one set only')
    .action(async (house, show, options) => ended(await check(voice, { house, show, ...options })));
  program
    .command('sheets')
    .description('writes the sheets that a hang is checked and worked by, as PDF and CSV')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .requiredOption('--out <folder>', 'where the files go; made if it is not there')
    .addOption(state)
    .addOption(paper)
    .addOption(by)
    .option('--only <sheet>', 'one sheet, by its id: balance-card/11, schedule ...')
    .addOption(language)
    .addOption(json)
    .action(async (house, show, options) =>
      ended(await writeSheets(voice, { house, show, ...options })),
    );
  program
    .command('compute')
    .description('one calculation: JSON in (SI units), JSON out; a list in, a list out')
    .argument('[name]', 'the calculation; compute --list names them all')
    .option('--list', 'name every calculation')
    .option('--schema', 'print the JSON Schema of its input and output')
    .option('--input <file>', 'read this file instead of standard input', '-')
    .addOption(
      new Option('--words <units>', 'plan and verify: in words instead of JSON').choices([
        'customary',
        'metric',
      ]),
    )
    .addOption(json)
    .action(async (name, options) => ended(await compute(voice, { name, ...options })));
  program
    .command('schema')
    .description('prints the JSON Schema (2020-12) of a document: house, show, state or order')
    .argument('<name>', 'house, show, state or order')
    .addOption(json)
    .action((name) => ended(printSchema(voice, name)));
  program
    .command('self-check')
    .description('reruns the validation cases on this copy of the program, and reports')
    .option('--pdf <file>', 'write the report as PDF too')
    .addOption(paper)
    .addOption(by)
    .addOption(json)
    .action(async (options) => ended(await selfCheck(voice, options)));
};
