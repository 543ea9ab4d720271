/** `npm run kill-test`: 200 kills under load on one database; `-- ROUNDS SEED` for others. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { killAgainAndAgain } from './kill-rounds.ts';

const [rounds = '200', seed = String(Date.now() % 2 ** 31)] = process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-kill-'));
process.stdout.write(`${rounds} kills, seed ${seed}\n`);
const { acknowledged, unacknowledged, faults } = await killAgainAndAgain(
  join(folder, 'killed.sqlite'),
  {
    rounds: Number(rounds),
    seed: Number(seed),
    told: (round, so) => {
      if (round % 20 === 0) process.stdout.write(`${round} kills, ${so.acknowledged} told\n`);
    },
  },
);
for (const fault of faults) process.stdout.write(`${fault}\n`);
process.stdout.write(
  `${acknowledged} acknowledged, ${faults.length} faults; ` +
    `${unacknowledged} recorded that nobody was told of\n`,
);
rmSync(folder, { recursive: true });
process.exitCode = faults.length === 0 ? 0 : 1;
