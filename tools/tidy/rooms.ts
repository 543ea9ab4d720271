/** A room has a door, a README of at most 40 lines, and its line in the imports map. */
import type { Check, Fault, Source } from './fault.ts';
import { OUTBUILDINGS, ROOMS, type Room } from './floors.ts';
import { isCode } from './sources.ts';

const README_LIMIT = 40;

/** Nobody opens the top floor, so its rooms need no line in the imports map. */
const TOP = 14;

const faultsOfRoom = (room: Room, files: ReadonlyMap<string, string>): readonly Fault[] => {
  const fault = (file: string, what: string, wanted: string): Fault => ({
    file: `${room.folder}/${file}`,
    line: 1,
    what,
    wanted,
  });
  const readme = files.get(`${room.folder}/README.md`);
  const lines = readme?.replace(/\n$/, '').split('\n').length ?? 0;
  const found: Fault[] = [];
  if (room.floor < TOP && !files.has(`${room.folder}/index.ts`)) {
    found.push(
      fault('index.ts', 'the room has no door', 'an index.ts that exports what it offers'),
    );
  }
  if (readme === undefined) {
    found.push(
      fault('README.md', 'the room has no README', 'what it answers and what it will not'),
    );
  }
  if (lines > README_LIMIT) {
    found.push(fault('README.md', `${lines} lines`, `at most ${README_LIMIT}`));
  }
  return found;
};

const homeless = (sources: readonly Source[]): readonly Fault[] => {
  const known = [...ROOMS.map(({ folder }) => folder), ...OUTBUILDINGS];
  return sources
    .filter(({ path }) => isCode(path) && path.includes('/') && !path.startsWith('.'))
    .filter(({ path }) => !known.some((folder) => path.startsWith(`${folder}/`)))
    .map(({ path }) => ({
      file: path,
      line: 1,
      what: 'in no room',
      wanted: 'a room of tools/tidy/floors.ts, or a new line there',
    }));
};

const doorsOf = (manifest: string): Readonly<Record<string, string>> =>
  (JSON.parse(manifest) as { readonly imports?: Record<string, string> }).imports ?? {};

const unlistedDoors = (built: readonly Room[], manifest: string): readonly Fault[] => {
  const doors = doorsOf(manifest);
  return built
    .filter(({ floor }) => floor < TOP)
    .filter(({ name, folder }) => doors[`#${name}`] !== `./${folder}/index.ts`)
    .map(({ name, folder }) => ({
      file: 'package.json',
      line: 1,
      what: `the imports map does not open #${name}`,
      wanted: `"#${name}": "./${folder}/index.ts"`,
    }));
};

/** The map of the house names each room that is built. */
const unmapped = (built: readonly Room[], map: string): readonly Fault[] =>
  built
    .filter(({ name }) => !map.includes(`| \`${name}\` |`))
    .map(({ name }) => ({
      file: 'HOUSE.md',
      line: 1,
      what: `the room ${name} is not on the map`,
      wanted: 'a row with its floor and what it holds',
    }));

export const rooms: Check = (sources) => {
  const files = new Map(sources.map(({ path, text }) => [path, text]));
  const isBuilt = ({ folder }: Room): boolean =>
    sources.some(({ path }) => isCode(path) && path.startsWith(`${folder}/`));
  const built = ROOMS.filter(isBuilt);
  const manifest = files.get('package.json');
  const map = files.get('HOUSE.md');
  return [
    ...built.flatMap((room) => faultsOfRoom(room, files)),
    ...homeless(sources),
    ...(manifest === undefined ? [] : unlistedDoors(built, manifest)),
    ...(map === undefined ? [] : unmapped(built, map)),
  ];
};
