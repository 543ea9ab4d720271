/** Sheets to PDF. Nothing is fetched, no file is opened, and the clock is the stamp's. */

import pdfmake from 'pdfmake';
import type {
  Content,
  ContentSection,
  ContentText,
  ContextPageSize,
  TDocumentDefinitions,
} from 'pdfmake/interfaces.js';
import { assert } from '#outcome';
import type { Sheet } from '#sheets';
import { bodyContents } from './blocks.ts';
import { LOOSE, nextTightness, type Tightness, tightened } from './fit.ts';
import { FONT_NAMES, fonts } from './fonts.ts';
import { FOOTER_HEIGHT, footerContent } from './page-foot.ts';
import { frameContent } from './page-frame.ts';
import { headerContent, headerHeight, headerRule } from './page-head.ts';
import { edgesOf, PAPERS, type Paper } from './paper.ts';

const WORKING_SIZE = 14;

/** The maker of the PDF keeps files in memory under a name; its types do not say so. */
type WithFiles = {
  readonly virtualfs: { readonly writeFileSync: (name: string, content: Buffer) => void };
};

let isReady = false;

/** The fonts are all that the maker of the PDF is given; it may reach for nothing else. */
const makeReady = (): void => {
  if (isReady) return;
  const { virtualfs } = pdfmake as unknown as WithFiles;
  for (const { name, font } of fonts()) virtualfs.writeFileSync(name, font);
  pdfmake.setFonts(FONT_NAMES);
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy(() => false);
  isReady = true;
};

/**
 * No words, in each of the fonts. Lettering on a drawing finds only a font that some text has
 * opened before.
 */
const everyFont = (): ContentText => ({
  text: Object.keys(FONT_NAMES).flatMap((font) =>
    [false, true].map((bold) => ({ text: '', font, bold, fontSize: 0.01 })),
  ),
});

/** One sheet among those of a file, with the pages of the file that it came to lie on. */
type Laid = { readonly sheet: Sheet; readonly pages: Set<number> };

const sectionOf = ({ sheet, pages }: Laid, paper: Paper): ContentSection => {
  const edges = edgesOf(sheet, paper);
  const { width, margin } = edges;
  const height = headerHeight(sheet, edges);
  const placeOf = (page: number) => ({
    page: page - Math.min(...pages) + 1,
    pages: pages.size,
  });
  return {
    section: [everyFont(), ...bodyContents(sheet.blocks, width)],
    pageSize: { ...PAPERS[paper] },
    pageOrientation: sheet.orientation,
    pageMargins: [margin, height, margin, FOOTER_HEIGHT],
    // Called for each page as it is begun, and before any header: so the pages are counted here.
    background: (page: number, size: ContextPageSize): Content => {
      pages.add(page);
      return [
        ...(sheet.frame === null ? [] : [frameContent(sheet.frame, size)]),
        headerRule(margin, width, height),
      ];
    },
    header: (page: number): Content => headerContent(sheet, placeOf(page), edges),
    footer: (page: number): Content => footerContent(sheet, placeOf(page), edges),
  };
};

const titleOf = ({ title, number, name }: Sheet): string =>
  `${title}${number === null ? '' : ` ${number}`}, ${name}`;

const infoOf = (sheets: readonly Sheet[]): NonNullable<TDocumentDefinitions['info']> => {
  const [first, ...more] = sheets;
  assert(first !== undefined, 'a file has at least one sheet');
  const creationDate = new Date(first.printedAt);
  assert(!Number.isNaN(creationDate.getTime()), 'the stamp of a sheet is an ISO date and time');
  return {
    title: more.length === 0 ? titleOf(first) : `${titleOf(first)}, and ${more.length} more sheets`,
    subject: sheets.map(({ footer }) => footer.code).join(' '),
    creator: 'Counterpoise',
    producer: 'Counterpoise',
    creationDate,
  };
};

type File = { readonly bytes: Uint8Array; readonly pages: readonly number[] };

const makeFile = async (sheets: readonly Sheet[], paper: Paper): Promise<File> => {
  const laid = sheets.map((sheet): Laid => ({ sheet, pages: new Set() }));
  const buffer = await pdfmake
    .createPdf({
      info: infoOf(sheets),
      defaultStyle: { font: 'Narrow', fontSize: WORKING_SIZE },
      content: laid.map((each) => sectionOf(each, paper)),
    })
    .getBuffer();
  return { bytes: new Uint8Array(buffer), pages: laid.map(({ pages }) => pages.size) };
};

/** More than any sheet can ask for. */
const MOST_ROUNDS = 12;

/**
 * Sheets as one PDF, each from a page of its own and numbered n of m by itself. The same sheets
 * give the same bytes. They are laid out for a width that fits both papers. A balance card that
 * would be two pages gets smaller drawings; if they do not help, it stays two pages and says so.
 */
export const renderSheets = async (sheets: readonly Sheet[], paper: Paper): Promise<Uint8Array> => {
  makeReady();
  const loose = await makeFile(sheets, paper);
  let file = loose;
  let tightness: readonly Tightness[] = sheets.map(() => LOOSE);
  const settled = new Set<number>();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = sheets.map((sheet, at) => {
      if (settled.has(at)) return null;
      const pages = { now: file.pages[at] ?? 1, loose: loose.pages[at] ?? 1 };
      return nextTightness(sheet, tightness[at] ?? LOOSE, pages);
    });
    if (next.every((each) => each === null)) return file.bytes;
    next.forEach((each, at) => {
      if (each === null || each === LOOSE) settled.add(at);
    });
    tightness = tightness.map((own, at) => next[at] ?? own);
    file = await makeFile(
      sheets.map((sheet, at) => tightened(sheet, tightness[at] ?? LOOSE)),
      paper,
    );
  }
  return file.bytes;
};

/** One sheet as a PDF of its own. */
export const renderPdf = (sheet: Sheet, paper: Paper): Promise<Uint8Array> =>
  renderSheets([sheet], paper);
