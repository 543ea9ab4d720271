export { hashOfFiles, programFiles } from './program-files.ts';
export { TERMS } from './terms.ts';
export { thisInstallation } from './this-installation.ts';
