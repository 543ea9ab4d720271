export { hashOfFiles, programFiles } from './program-files.ts';
export { thisInstallation } from './this-installation.ts';
