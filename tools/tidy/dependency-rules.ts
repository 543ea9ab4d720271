/** The floors and doors of floors.ts, as rules of the dependency checker. */
import type { IForbiddenRuleType } from 'dependency-cruiser';
import {
  CASES_DOOR,
  mayOpen,
  OUTBUILDINGS,
  ROOMS,
  type Room,
  SERVER_REFUSED,
  SERVER_STAIR,
} from './floors.ts';

type Rule = IForbiddenRuleType;

const TESTS = '\\.(test|contract)\\.tsx?$';
/** Run beside each implementation, wherever that is; code opens none (`test-from-code`). */
const CONTRACT = '\\.contract\\.ts$';
const inside = (folders: readonly string[]): string => `^(${folders.join('|')})/`;
const exactly = (files: readonly string[]): string =>
  `^(${files.join('|').replaceAll('.', '\\.')})$`;
const EVERY_ROOM = ROOMS.map(({ folder }) => folder);

const error = (name: string, comment: string): Pick<Rule, 'name' | 'comment' | 'severity'> => ({
  name,
  comment,
  severity: 'error',
});

const stairs = (from: Room): readonly Rule[] => {
  const others = ROOMS.filter((room) => room !== from);
  const refused = (answer: 'no' | 'types'): readonly string[] =>
    others.filter((to) => mayOpen(from, to) === answer).map(({ folder }) => folder);
  const shut: Rule = {
    ...error(`stairs-${from.name}`, 'a door on a lower floor'),
    from: { path: inside([from.folder]) },
    to: { path: inside(refused('no')) },
  };
  if (refused('types').length === 0) return [shut];
  const typesOnly: Rule = {
    ...error(`types-only-${from.name}`, 'an "import type": it judges what it did not make'),
    from: { path: inside([from.folder]) },
    to: { path: inside(refused('types')), dependencyTypesNot: ['type-only'] },
  };
  return [shut, typesOnly];
};

const windows: readonly Rule[] = [
  {
    ...error('window', 'the door of the room, index.ts'),
    from: { path: `^(${EVERY_ROOM.join('|')})/` },
    to: { path: inside(EVERY_ROOM), pathNot: ['^$1/', '^[^.]*/index\\.ts$', CONTRACT] },
  },
  {
    ...error('window-from-outside', 'the door of the room, index.ts'),
    from: { path: inside(['validation', 'examples', 'pins', 'bench']) },
    to: { path: inside(EVERY_ROOM), pathNot: '/index\\.ts$' },
  },
  {
    ...error('door-by-name', 'the name of the door, such as #balance'),
    from: { path: `^(${EVERY_ROOM.join('|')})/` },
    to: {
      path: inside(EVERY_ROOM),
      pathNot: ['^$1/', CONTRACT],
      dependencyTypesNot: ['aliased-subpath-import'],
    },
  },
  {
    ...error('outbuilding', 'no room opens an outbuilding'),
    from: { path: inside(EVERY_ROOM), pathNot: [TESTS, `^${CASES_DOOR.opener}/`] },
    to: { path: inside(OUTBUILDINGS) },
  },
  {
    ...error('outbuilding-cases', 'of all outbuildings the lists of validation cases only'),
    from: { path: `^${CASES_DOOR.opener}/`, pathNot: TESTS },
    to: { path: inside(OUTBUILDINGS), pathNot: exactly(CASES_DOOR.files) },
  },
];

/** What the cases may not so much as reach, so that they run in a browser and an installation. */
const ABOVE_CASES = ROOMS.filter(({ floor, name }) => floor > 10 && name !== CASES_DOOR.opener);

const cases: readonly Rule[] = [
  {
    ...error('case-room', 'only doors of the engine below a case that the self-check reruns'),
    from: { path: exactly(CASES_DOOR.files) },
    to: { path: inside(ABOVE_CASES.map(({ folder }) => folder)), reachable: true },
  },
  {
    ...error('case-package', 'no package and nothing of Node below a case of the self-check'),
    from: { path: exactly(CASES_DOOR.files) },
    to: { path: '^(node_modules/|node:)|^[a-z_]+$', reachable: true },
  },
];

const packagesOf = (room: Room): readonly Rule[] => {
  if (room.packages === 'any') return [];
  const allowed = room.packages.map((name) => `node_modules/${name}/`);
  const rule: Rule = {
    ...error(`packages-${room.name}`, `no package but ${room.packages.join(', ') || 'none'}`),
    from: { path: inside([room.folder]), pathNot: TESTS },
    to: {
      dependencyTypes: ['npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'core'],
      pathNot: allowed,
    },
  };
  return [rule];
};

const everywhere: readonly Rule[] = [
  { ...error('cycle', 'no cycle'), from: {}, to: { circular: true } },
  {
    ...error('unresolved', 'a module that exists'),
    from: {},
    // A package may have its types in another; whether they are there is the compiler's to say.
    to: { couldNotResolve: true, path: '^[.#]' },
  },
  {
    ...error('test-from-code', 'no test in the code'),
    from: { pathNot: TESTS },
    to: { path: TESTS },
  },
  {
    ...error('development-package', 'a package of "dependencies"'),
    from: { path: inside(EVERY_ROOM), pathNot: [TESTS, '^web/vite\\.config\\.ts$'] },
    to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
  },
  {
    ...error('browser', 'nothing of Node in the browser'),
    from: { path: '^web/', pathNot: [TESTS, '^web/vite\\.config\\.ts$'] },
    to: { dependencyTypes: ['core'] },
  },
];

const serverStair = (): readonly Rule[] =>
  SERVER_STAIR.flatMap((step, height) =>
    step.map((room) => {
      const above = SERVER_STAIR.slice(height).flat();
      const refused = [...above, ...(SERVER_REFUSED[room] ?? [])].filter((name) => name !== room);
      return {
        ...error(`server-stair-${room}`, 'a lower step of the stair inside server'),
        from: { path: `^server/${room}/` },
        to: { path: refused.length === 0 ? '^$' : `^server/(${refused.join('|')})/` },
      };
    }),
  );

export const dependencyRules = (): Rule[] => [
  ...ROOMS.flatMap(stairs),
  ...windows,
  ...cases,
  ...ROOMS.flatMap(packagesOf),
  ...serverStair(),
  ...everywhere,
];
