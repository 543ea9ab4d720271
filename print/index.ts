export { csvOf } from './csv.ts';
export { fileNameOf } from './file-name.ts';
export { localMoment } from './local-moment.ts';
export { PAPERS, type Paper } from './paper.ts';
export { renderPdf, renderSheets } from './pdf.ts';
