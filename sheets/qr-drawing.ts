/** A QR of a sheet's address as a drawing: one path, black on paper. */

import qrcode from 'qrcode-generator';
import { type Drawing, path, rect } from '#drawings';

/** Modules of white that a reader needs round the code: ISO/IEC 18004, from memory. */
const QUIET = 4;

/** `counterpoise:house/sheet/code`, which any copy of the program can look up offline. */
export const sheetAddress = (houseId: string, sheetId: string, code: string): string =>
  `counterpoise:${houseId}/${sheetId}/${code}`;

export const qrDrawing = (text: string): Drawing => {
  const qr = qrcode(0, 'M');
  qr.addData(text);
  qr.make();
  const modules = qr.getModuleCount();
  const size = modules + 2 * QUIET;
  const cells = Array.from({ length: modules * modules }, (_, index) => ({
    row: Math.floor(index / modules),
    column: index % modules,
  })).filter(({ row, column }) => qr.isDark(row, column));
  const d = cells.map(({ row, column }) => `M${column + QUIET} ${row + QUIET}h1v1h-1z`).join('');
  return {
    width: size,
    height: size,
    title: `Code of this sheet: ${text}`,
    shapes: [rect(0, 0, size, size, { fill: 'paper' }), path(d, { fill: 'ink' })],
  };
};
