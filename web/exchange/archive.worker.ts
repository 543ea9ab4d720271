/** Tables and drawings made, hashed and packed on a thread of its own. */
import { documentFiles, type LeftOut, showFiles, writeArchive } from '#archive';
import { readHouseValue } from '#documents';
import { message } from '#texts';
import { readShowOnce, readStateOnce } from '../reckoning/read-once.ts';
import type { PackAnswer, PackRequest, ShowAsked } from './archive-request.ts';

const post = (answer: PackAnswer): void => self.postMessage(answer);

type Made = { readonly files: ReturnType<typeof showFiles>; readonly leftOut: readonly LeftOut[] };

/** A show that is not understood is left out by its name, and the rest is packed. */
const filesOf = ({ house, show, state, line }: ShowAsked): Made => {
  const what = `tables and drawings of ${String(show['name'] ?? show['id'])}`;
  const out = (why: string): Made => ({ files: [], leftOut: [{ what, why }] });
  const plant = readHouseValue(house);
  if (!plant.ok) return out(message('its house is not understood'));
  const read = readShowOnce(show, plant.value.house);
  if (!read.ok) return out(message('it is not understood'));
  const record = state === null ? null : readStateOnce(state, plant.value.house);
  if (record !== null && !record.ok)
    return out(message('the record of its house is not understood'));
  const source = {
    house: plant.value.house,
    show: read.value,
    state: record === null ? null : record.value.state,
    line,
  };
  return { files: showFiles(source), leftOut: [] };
};

self.addEventListener('message', ({ data }: MessageEvent<PackRequest>) => {
  const of = data.shows.length + 1;
  const made = data.shows.map((show, at) => {
    post({ is: 'part', done: at, of });
    return filesOf(show);
  });
  post({ is: 'part', done: of - 1, of });
  const files = [
    ...documentFiles(data.documents),
    ...made.flatMap((each) => each.files),
    ...data.files,
  ];
  const leftOut = [...data.leftOut, ...made.flatMap((each) => each.leftOut)];
  const bytes = writeArchive({ made: data.made, files, leftOut });
  const own = new Uint8Array(bytes);
  post({ is: 'packed', bytes: own, files: files.length, leftOut });
});
