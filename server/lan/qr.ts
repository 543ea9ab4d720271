/** An address as a QR: for a terminal, and as a drawing for a page. Black on white in both. */
import qrcode from 'qrcode-generator';

/** Modules of white that a reader needs round the code: ISO/IEC 18004, from memory. */
const QUIET = 4;

type Modules = { readonly size: number; readonly isDark: (row: number, column: number) => boolean };

const modulesOf = (text: string): Modules => {
  const qr = qrcode(0, 'M');
  qr.addData(text);
  qr.make();
  const count = qr.getModuleCount();
  const isInside = (at: number): boolean => at >= QUIET && at < count + QUIET;
  return {
    size: count + 2 * QUIET,
    isDark: (row, column) =>
      isInside(row) && isInside(column) && qr.isDark(row - QUIET, column - QUIET),
  };
};

/** Two rows in one line of text. Colours are set, since a terminal may be light or dark. */
export const qrText = (text: string): string => {
  const { size, isDark } = modulesOf(text);
  const rows = Array.from({ length: Math.ceil(size / 2) }, (_, line) =>
    Array.from({ length: size }, (_unused, column) => {
      const [upper, lower] = [isDark(2 * line, column), isDark(2 * line + 1, column)];
      if (upper && lower) return '█';
      if (upper) return '▀';
      return lower ? '▄' : ' ';
    }).join(''),
  );
  return rows.map((row) => `\x1b[30;107m${row}\x1b[0m`).join('\n');
};

export const qrSvg = (text: string, title: string): string => {
  const { size, isDark } = modulesOf(text);
  const cells = Array.from({ length: size * size }, (_, index) => ({
    row: Math.floor(index / size),
    column: index % size,
  })).filter(({ row, column }) => isDark(row, column));
  const d = cells.map(({ row, column }) => `M${column} ${row}h1v1h-1z`).join('');
  return (
    `<svg class="qr" role="img" aria-label="${escaped(title)}" viewBox="0 0 ${size} ${size}" ` +
    `shape-rendering="crispEdges"><path fill="#fff" d="M0 0h${size}v${size}h-${size}z"/>` +
    `<path fill="#000" d="${d}"/></svg>`
  );
};

/** Text as it stands in HTML, in an attribute too. */
export const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
