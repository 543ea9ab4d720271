/** The chosen sheet for paper and for a spreadsheet: made by the server, from what is saved. */

import type { House } from '#house';
import type { Sheet } from '#sheets';
import { message, phrase } from '#texts';
import { Notice } from '../frame/notice.tsx';
import type { Kept } from '../keeping/kept.ts';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { useKeeperState } from '../keeping/use-keeper.ts';
import { useSpoken, useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';

const askFor = (path: string, asked: Readonly<Record<string, string>>): string =>
  `${path}?${new URLSearchParams(asked).toString()}`;

const isUnsaved = (kept: Kept | null): boolean => kept !== null && kept.save.is !== 'saved';

const OF_A_SET: ReadonlyMap<string, string> = new Map([
  ['balance-card', message('balance card')],
  ['hanging-card', message('hanging card')],
  ['strike-sheet', message('strike sheet')],
  ['loading-sheet', message('loading sheet')],
  ['unloading-sheet', message('unloading sheet')],
]);

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** The sheet in words: a card has a set of its own, and every other sheet has a title. */
const sheetWords = (sheet: Sheet, house: House): string => {
  const { id, title, kind: of, name, number } = sheet;
  const [kind = '', set] = id.split('/');
  if (of === 'section') return `${phrase(house, 'section')}, ${small(name)}`;
  if (of === 'plan') return `${phrase(house, 'plan')}, ${small(name)}`;
  const ours = OF_A_SET.get(kind);
  if (set !== undefined && number !== null) {
    return phrase(house, '{kind}, set {set}', {
      kind: phrase(house, ours ?? kind.replaceAll('-', ' ')),
      set,
    });
  }
  // Only English writes a noun small in the middle of a sentence.
  const titled = house.tongue === undefined ? small(title) : title;
  if (set === undefined) return titled;
  // Of a gallery, or of a whole call.
  return `${ours === undefined ? titled : phrase(house, ours)}, ${name}`;
};

/** The name is looked up when the link is followed, for it may be typed after this is drawn. */
const withName = (link: HTMLAnchorElement): void => {
  const url = new URL(link.href);
  url.searchParams.set('by', nameOnDevice());
  link.href = url.href;
};

/** Where the server is not reached the browser prints what is on the screen, with its age. */
const PrintHere = () => {
  const tell = useTell();
  return (
    <>
      <p className="leaf-print">
        <button type="button" onClick={() => window.print()}>
          {tell('Print what is on this screen')}
        </button>
      </p>
      <p className="leaf-print quiet">
        {tell(
          'PDF and CSV are made by the server, which is not reached. The print says how old what ' +
            'it shows is.',
        )}
      </p>
    </>
  );
};

export const PrintLinks = ({ sheet }: { readonly sheet: Sheet }) => {
  const state = useKeeperState();
  const isCopy = state.phase === 'open' && state.asOf !== null;
  return isCopy ? <PrintHere /> : <PrintsOfServer sheet={sheet} />;
};

const PrintsOfServer = ({ sheet }: { readonly sheet: Sheet }) => {
  const tell = useTell();
  const { house, show, kept } = useWork();
  const { language } = useSpoken();
  const job = { house: house.id, show: show.id, sheet: sheet.id, by: nameOnDevice(), language };
  const links = [
    { words: tell('PDF, Letter'), href: askFor('/api/sheet.pdf', { ...job, paper: 'letter' }) },
    { words: tell('PDF, A4'), href: askFor('/api/sheet.pdf', { ...job, paper: 'a4' }) },
    ...(sheet.data === null ? [] : [{ words: tell('CSV'), href: askFor('/api/sheet.csv', job) }]),
  ];
  const waits = [kept.house, kept.show, kept.state].some(isUnsaved);
  return (
    <>
      <p className="leaf-print">
        <span>{tell('Print {sheetWords}:', { sheetWords: sheetWords(sheet, house) })}</span>
        {links.map(({ words, href }) => (
          <a
            key={words}
            href={href}
            target="_blank"
            rel="noreferrer"
            onClick={({ currentTarget }) => withName(currentTarget)}
          >
            {words}
          </a>
        ))}
      </p>
      {waits ? (
        <Notice degree="caution" title={tell('some edits are not saved yet')} isNews>
          <p>
            {tell(
              'The print is made from what is saved; the preview shows what is on this screen.',
            )}
          </p>
        </Notice>
      ) : null}
    </>
  );
};
