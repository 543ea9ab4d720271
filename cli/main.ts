import { run } from './program.ts';
import { processVoice } from './voice.ts';

process.exitCode = await run(process.argv.slice(2), processVoice);
