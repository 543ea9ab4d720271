/** Which database of a folder a file is of, whatever it is called and wherever it lies. */
import { type DatabaseName, FIRST_LOADED } from './databases.ts';
import { NotOpened, openRecordFile } from './log/index.ts';

/** What the program itself puts into a house that begins, and into the demo never. */
export const BLANK_IDS = { house: 'house:house', show: 'show:first-show' } as const;
const BLANK: ReadonlySet<string> = new Set(Object.values(BLANK_IDS));

/**
 * Told by what the program itself wrote into it first, which is there for good: no revision is
 * ever changed. The demo always has its documents so; what a person brought into a house came
 * under that person's name. A house that was once put in the place of the demo got the documents
 * of the demo too, and is a house all the same.
 */
export const databaseOf = (file: string): DatabaseName => {
  const { database, close } = openRecordFile(file);
  try {
    const first = database
      .prepare('SELECT document FROM revision WHERE revision = 1 AND saved_by = ? AND why = ?')
      .all(FIRST_LOADED.savedBy, FIRST_LOADED.why);
    const isHouse = first.some(({ document }) => BLANK.has(String(document)));
    return isHouse || first.length === 0 ? 'house' : 'demo';
  } catch (fault) {
    throw new NotOpened(`${file} does not verify: ${String(fault)}`);
  } finally {
    close();
  }
};
