export { fetchTongue } from './fetch-tongue.ts';
