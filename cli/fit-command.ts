import type { Command } from 'commander';
import type { ExitCode } from './exit-codes.ts';
import { fitToHouse } from './fit.ts';
import type { Voice } from './voice.ts';

export const addFitCommand = (
  program: Command,
  voice: Voice,
  ended: (code: ExitCode) => void,
): void => {
  program
    .command('fit')
    .description('fits a show to another house: what differs, what no longer works, what to ask')
    .argument('<from>', 'house that the show leaves')
    .argument('<show>', 'show document')
    .requiredOption('--house <file>', 'house that it goes to')
    .option('--state <file>', 'how the sets stand there, as recorded')
    .option('--out <file>', 'write the show for that house')
    .option('--id <id>', 'its id; else that of the show')
    .option('--name <name>', 'its name; else that of the show')
    .option('--json', 'answer as JSON')
    .action(async (from, show, options) =>
      ended(await fitToHouse(voice, { from, show, ...options })),
    );
};
