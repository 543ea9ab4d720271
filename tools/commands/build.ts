/** Builds the screens if they changed, and does no more: for who starts the server by itself. */
import { buildWeb } from '../running/web-build.ts';

process.exitCode = await buildWeb();
