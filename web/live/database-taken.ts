/**
 * Said by the step that takes another database in hand, on this page and by this person's will:
 * that it is another house then is no alarm here. Part of the first view, so it holds no more.
 */
type Hearer = { readonly begins: () => void; readonly ends: () => void };

const hearers = new Set<Hearer>();

export const onDatabaseTaken = (hearer: Hearer): void => void hearers.add(hearer);

export const whileDatabaseIsTaken = async <T>(take: () => Promise<T>): Promise<T> => {
  for (const { begins } of hearers) begins();
  try {
    return await take();
  } finally {
    for (const { ends } of hearers) ends();
  }
};
