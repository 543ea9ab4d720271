/** The footer of every page: the code, what makes the sheet void, the cautions, page n of m. */

import type { Content } from 'pdfmake/interfaces.js';
import type { Sheet } from '#sheets';
import { ENGLISH, phrase } from '#texts';
import type { PageOf } from './page-head.ts';
import type { Edges } from './paper.ts';
import { svgOf } from './svg-of.ts';
import { textRuns } from './words.ts';

export const FOOTER_HEIGHT = 84;
const FOOTER_SIZE = 11;
const QR_SIZE = 58;
/** White that the code carries on its left, so that its black stands at the margin. */
const QR_QUIET = 5;

/** What makes the sheet void stands alone, since it is read first when a set was touched. */
export const footerContent = (
  { footer, tongue }: Sheet,
  { page, pages }: PageOf,
  { margin }: Pick<Edges, 'margin'>,
): Content => {
  const voice = { ...ENGLISH, tongue };
  const small = { size: FOOTER_SIZE };
  const strong = { size: FOOTER_SIZE, bold: true };
  return {
    margin: [margin - QR_QUIET, 5, margin, 0],
    columns: [
      { svg: svgOf(footer.qr), fit: [QR_SIZE, QR_SIZE], width: QR_SIZE },
      {
        stack: [
          { text: textRuns(footer.voidIf, strong) },
          {
            columns: [
              {
                text: [
                  ...textRuns(phrase(voice, 'Scan, or type '), small),
                  ...textRuns(footer.code, strong).map((run) => ({ ...run, noWrap: true })),
                  ...textRuns(phrase(voice, ': current or superseded.'), small),
                ],
                width: '*',
              },
              {
                text: textRuns(phrase(voice, 'page {page} of {pages}', { page, pages }), strong),
                width: 'auto',
              },
            ],
          },
          { text: textRuns(footer.cautions.join(' '), small) },
        ],
        width: '*',
      },
    ],
    columnGap: 8,
  };
};
