import { type Command, Option } from 'commander';
import { drill } from './drill.ts';
import type { ExitCode } from './exit-codes.ts';
import { pair } from './pair.ts';
import { plan } from './plan.ts';
import { verify } from './verify.ts';
import type { Voice } from './voice.ts';

const noDoubt = new Option('--no-doubt', 'take every mass as it is written, not at its worst');
const lock = new Option('--lock <limit>', 'planning: people may be in the path; nominal: nobody is')
  .choices(['planning', 'nominal'])
  .default('planning');
const json = new Option('--json', 'answer as JSON');

export const addOrderCommands = (
  program: Command,
  voice: Voice,
  ended: (code: ExitCode) => void,
): void => {
  program
    .command('plan')
    .description('finds an order of work for one set, or says why there is none; replays it')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .requiredOption('--set <id>', 'the line set')
    .option('--state <file>', 'how the sets stand, and the loose bricks, as recorded')
    .addOption(
      new Option('--from <start>', 'you say that the set is bare on its low stop').choices([
        'bare',
      ]),
    )
    .option('--to <goal>', 'load, strike, or a state document with the set as wanted', 'load')
    .option('--at <height>', 'where the batten is to be in the end')
    .option('--steel <rating>', 'rating of the steel that the set is to be hung on')
    .addOption(noDoubt)
    .addOption(lock)
    .option('--out <file>', 'write the order, where the judge accepts it')
    .addOption(
      new Option(
        '--drill',
        'weigh what hangs on the low stop, brick by brick with a pull',
      ).conflicts(['to', 'at', 'steel', 'doubt', 'lock', 'out']),
    )
    .option('--with <id>', 'the set that it is coupled with: one order for both')
    .option('--least <height>', 'with it: how much higher the second batten may be, at least')
    .option('--most <height>', 'with it: and at most')
    .addOption(json)
    .action(async (house, show, options) => {
      const asked = { house, show, ...options };
      if (options.with !== undefined) ended(await pair(voice, asked));
      else ended(await (options.drill === true ? drill(voice, asked) : plan(voice, asked)));
    });
  program
    .command('verify')
    .description('replays an order of work, and names the first rule that it breaks')
    .argument('<house>', 'house document')
    .argument('<show>', 'show document')
    .argument('<order>', 'order document')
    .requiredOption('--state <file>', 'how the sets stand, and the loose bricks, as recorded')
    .addOption(noDoubt)
    .addOption(lock)
    .addOption(json)
    .action(async (house, show, order, options) =>
      ended(await verify(voice, { house, show, order, ...options })),
    );
};
