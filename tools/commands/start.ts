/** `npm start -- ARGS`: builds the screens if they changed, then serves them. */
import { runNode } from '../running/program.ts';
import { buildWeb } from '../running/web-build.ts';

const start = async (args: readonly string[]): Promise<number> => {
  const built = await buildWeb();
  if (built !== 0) return built;
  process.stderr.write('Starting the server; Ctrl-C stops it.\n');
  const { code } = await runNode(['server/main.ts', ...args], { shown: true });
  return code;
};

process.exitCode = await start(process.argv.slice(2));
