export {
  type Listening,
  loopbackListening,
  openListening,
  PORT,
} from './listening.ts';
export { isOwnHost, isSameOrigin } from './own-hosts.ts';
export { readLanSettings } from './settings.ts';
export { startWords } from './start-words.ts';
export { trustAnswer, trustServer } from './trust-answers.ts';
export { TRUST_PATHS } from './trust-page.ts';
