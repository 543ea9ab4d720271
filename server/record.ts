/**
 * Commands on the record of a house: `npm run backup`, `restore`, `verify-record`, `take-out` and
 * `make-record`. They work beside a running server, but for those that say they do not.
 */
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { Command, CommanderError, Option } from 'commander';
import { databaseOf } from './database-of.ts';
import { type DatabaseName, hasDatabase, nameInHand, noteInHand } from './databases.ts';
import {
  backUp,
  bringInAlone,
  NotOpened,
  openHouseRecord,
  openRecordFile,
  restore,
  takeOut,
  verifyRecord,
} from './log/index.ts';

export type Said = { readonly out: (text: string) => void; readonly err: (text: string) => void };

/** 0 done, 1 a record that does not verify, 2 a command not understood or not possible. */
type Code = 0 | 1 | 2;

export const run = async (args: readonly string[], said: Said): Promise<Code> => {
  let code: Code = 0;
  const program = buildProgram(said, (ended) => {
    code = ended;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (fault) {
    if (fault instanceof CommanderError) return fault.exitCode === 0 ? 0 : 2;
    said.err(`${fault instanceof NotOpened ? fault.message : String(fault)}\n`);
    return 2;
  }
};

type Where = { readonly data: string; readonly database?: DatabaseName };

const fileOf = ({ data, database = nameInHand(data) }: Where): string =>
  join(data, `${database}.sqlite`);

const DATA = process.env['COUNTERPOISE_DATA'] ?? join(import.meta.dirname, '..', '.data');

const buildProgram = (said: Said, ended: (code: Code) => void): Command => {
  const program = new Command('record')
    .description('Backs up, restores, verifies and takes out the record of a house.')
    .configureOutput({ writeOut: said.out, writeErr: said.err })
    .exitOverride();
  addReading(program, said, ended);
  addWriting(program, said);
  for (const command of program.commands) {
    command
      .addOption(new Option('--data <folder>', 'where the databases are').default(DATA))
      .addOption(
        new Option(
          '--database <name>',
          'which; without it the one in hand, and of a restore the one that the backup is of',
        ).choices(['house', 'demo']),
      )
      .exitOverride()
      .configureOutput({ writeOut: said.out, writeErr: said.err });
  }
  return program;
};

const addReading = (program: Command, said: Said, ended: (code: Code) => void): void => {
  program
    .command('verify')
    .description('holds the whole record against itself: file, chain, revisions, answers')
    .action((where: Where) => {
      const file = openRecordFile(fileOf(where));
      const { faults, head, revisions } = verifyRecord(file);
      file.close();
      for (const fault of faults) said.out(`${fault}\n`);
      said.out(
        faults.length === 0
          ? `The record is whole: ${head.seq} events, ${revisions} revisions. Head ${head.hash}\n`
          : `The record is NOT whole: ${faults.length} faults. Keep the file, restore a backup.\n`,
      );
      ended(faults.length === 0 ? 0 : 1);
    });
  program
    .command('backup')
    .description('one file with all of it, verified, while the server runs or not')
    .argument('<folder>', 'where it goes: best on another disk')
    .action((folder: string, where: Where) => {
      const { file, head, revisions } = backUp(fileOf(where), folder, new Date());
      said.out(`${file}: ${head.seq} events, ${revisions} revisions. Head ${head.hash}\n`);
    });
  program
    .command('take-out')
    .description('everything as plain files, with a README how to read and verify them')
    .argument('<folder>', 'where they go: empty, or made')
    .action((folder: string, where: Where) => {
      const { events, revisions, files } = takeOut(fileOf(where), folder);
      said.out(`${folder}: ${events} events, ${revisions} revisions, ${files} files.\n`);
    });
};

const addWriting = (program: Command, said: Said): void => {
  program
    .command('restore')
    .description('puts a backup in place, read only. Stop the server first')
    .argument('<backup>', 'a file that backup made')
    .action((backup: string, where: Where) => {
      said.out(restored(backup, where));
    });
  program
    .command('make-record')
    .description('makes a restored, copied or moved database the record. Stop the server first')
    .requiredOption('--by <name>', 'the person who decides it')
    .requiredOption('--why <words>', 'why it is the record now')
    .action(({ by, why, ...where }: Where & { readonly by: string; readonly why: string }) => {
      said.out(`${madeRecord(fileOf(where), by, why)}\n`);
    });
};

/** A house is never put in the place of the demo, nor the demo over a house. */
const restored = (backup: string, { data, database: wanted }: Where): string => {
  const database = databaseOf(backup);
  if (wanted !== undefined && wanted !== database) {
    throw new NotOpened(
      `${backup} is a backup of the ${database}, not of the ${wanted}; nothing was changed. ` +
        'Leave --database out.',
    );
  }
  const file = fileOf({ data, database });
  const isFirst = !hasDatabase(data);
  const { head } = restore(backup, file, new Date());
  // A folder that is new would open with the demo, and not with what was just put there.
  if (isFirst) noteInHand(data, database);
  const inHand = nameInHand(data);
  return (
    `${file} is restored: ${head.seq} events, read only. What was there is kept beside it.\n` +
    (inHand === database
      ? ''
      : `The ${inHand} is in hand: take the ${database} in hand on the page House, and give ` +
        `--database ${database} with these commands.\n`) +
    'Start the server and look. If it is to be the record: npm run make-record -- --help\n'
  );
};

const madeRecord = (file: string, saidBy: string, why: string): string => {
  // It must be there: a new database is a record from its first moment.
  openRecordFile(file).close();
  bringInAlone(file);
  const record = openHouseRecord(file, { nowMs: Date.now, newId: randomUUID });
  try {
    const isNamed = saidBy.trim() !== '' && saidBy.length <= 120;
    if (!isNamed || why.trim() === '' || why.length > 400) {
      throw new NotOpened(
        'A name of at most 120 and a reason of at most 400 characters are needed.',
      );
    }
    if (record.identity().isRecord) throw new NotOpened(`${file} is the record; nothing was done.`);
    const made = record.makeRecord({ by: null, saidBy, why });
    if (!made.ok) throw new NotOpened(`It was not made the record: ${made.error.detail}`);
    return (
      `${file} is the record now. Its devices show that it is another one, and each asks a ` +
      'person before it goes on.'
    );
  } finally {
    record.close();
  }
};

if (import.meta.main) {
  process.exitCode = await run(process.argv.slice(2), {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
  });
}
