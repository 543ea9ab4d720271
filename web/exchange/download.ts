/** A file made on this page, given to the person. */

export const TYPES = {
  csv: 'text/csv;charset=utf-8',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  json: 'application/json',
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  zip: 'application/zip',
} as const;

export type FileType = keyof typeof TYPES;

/** The browser has taken the bytes over by then. */
const LATER_MS = 60_000;

export const download = (
  name: string,
  type: FileType,
  content: string | Uint8Array<ArrayBuffer>,
): void => {
  const address = URL.createObjectURL(new Blob([content], { type: TYPES[type] }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), LATER_MS);
};
