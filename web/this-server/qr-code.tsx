/** An address to scan. Black on white in the dim light too, since a camera reads no other. */
import qrcode from 'qrcode-generator';

/** Modules of white that a reader needs round the code: ISO/IEC 18004, from memory. */
const QUIET = 4;

const pathOf = (text: string): { readonly d: string; readonly size: number } => {
  const qr = qrcode(0, 'M');
  qr.addData(text);
  qr.make();
  const count = qr.getModuleCount();
  const d = Array.from({ length: count * count }, (_, index) => {
    const [row, column] = [Math.floor(index / count), index % count];
    return qr.isDark(row, column) ? `M${column + QUIET} ${row + QUIET}h1v1h-1z` : '';
  }).join('');
  return { d, size: count + 2 * QUIET };
};

export const QrCode = ({ text, name }: { readonly text: string; readonly name: string }) => {
  const { d, size } = pathOf(text);
  return (
    <svg
      className="server-qr"
      role="img"
      aria-label={name}
      viewBox={`0 0 ${size} ${size}`}
      shapeRendering="crispEdges"
    >
      <path fill="#fff" d={`M0 0h${size}v${size}h-${size}z`} />
      <path fill="#000" d={d} />
    </svg>
  );
};
