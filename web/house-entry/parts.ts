/** The order in which a house is entered, and which field stands where. */
import { message } from '#texts';

/** Of a part with a list, paths are those of one entry. */
export type Group = { readonly title: string; readonly paths: readonly string[] };

export type PartList = {
  /** Where the list or record stands in the document. */
  readonly at: string;
  /** One of it, as it is added: "kind of brick". */
  readonly one: string;
  /** Absent: every field, in the order of the document. */
  readonly groups?: readonly Group[];
};

export type Part = {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly groups: readonly Group[];
  readonly lists: readonly PartList[];
};

const KIND_GROUPS: readonly Group[] = [
  {
    title: message('How it is carried'),
    paths: ['given', 'suspension', 'extends', 'rail', 'handLinePerBatten', 'remark'],
  },
  { title: message('Travel'), paths: ['lowStop', 'highStop', 'workingHeight'] },
  {
    title: message('Batten'),
    paths: [
      'batten.given',
      'batten.mass',
      'batten.left',
      'batten.right',
      'batten.massPerLength',
      'batten.fittingsPerLine',
      'batten.description',
      'liveLimit',
      'pointLimit',
      'perLengthLimit',
      'batten.pipe',
      'batten.splices',
    ],
  },
  {
    title: message('Lift lines'),
    paths: [
      'lines',
      'lineMassPerLength',
      'wireEndAbove',
      'lineLimit',
      'lift.given',
      'lift.cable',
      'lift.lineTrims',
      'lift.handLineMass',
    ],
  },
  { title: message('Blocks'), paths: ['lift.loftBlock', 'lift.headBlock', 'lift.muleBlocks'] },
  { title: message('Arbor'), paths: ['arbor'] },
];

/** What one set says that its kind does not; the rest is from its kind until it is typed here. */
const SET_GROUPS: readonly Group[] = [
  {
    title: message('Of this set alone'),
    paths: ['given', 'id', 'type', 'y', 'rail', 'remark', 'lock'],
  },
  { title: message('How it is carried'), paths: ['suspension', 'handLinePerBatten'] },
  ...KIND_GROUPS.slice(1),
];

export const PARTS: readonly Part[] = [
  {
    id: 'house',
    title: message('Name, units and words'),
    about: message('What the house is called, and how it speaks.'),
    groups: [
      {
        title: message('The house'),
        paths: ['name', 'units', 'words', 'language', 'demo', 'given', 'remarks'],
      },
      { title: message('Written by the program'), paths: ['id', 'format', 'version', '$schema'] },
    ],
    lists: [],
  },
  {
    id: 'stage',
    title: message('Stage'),
    about: message('Heights are above the deck, upstage is from the plaster line.'),
    groups: [{ title: message('Stage'), paths: ['stage'] }],
    lists: [],
  },
  {
    id: 'rules',
    title: message('Rules of the house'),
    about: message('The house sets these itself; none has a default.'),
    groups: [
      {
        title: message('Holding and pulling'),
        paths: [
          'rules.given',
          'rules.lockLimit',
          'rules.lockTestEvery',
          'rules.handLineLimit',
          'rules.pullBrief',
          'rules.pullSteady',
          'rules.peoplePerHandLine',
          'rules.frictionShare',
          'rules.frictionConstant',
        ],
      },
      {
        title: message('Lines, sheaves and beams'),
        paths: [
          'rules.clipsForbidden',
          'rules.lineDesignFactor',
          'rules.sheaveRatio',
          'rules.fleetAngleLimit',
          'rules.movingShare',
          'rules.sagLimit',
        ],
      },
      {
        title: message('What may be believed'),
        paths: ['rules.staleAfter', 'rules.toleranceByBasis'],
      },
    ],
    lists: [],
  },
  {
    id: 'bricks',
    title: message('Bricks and spreader plates'),
    about: message('The mass of each kind is this house’s own, from a weighed sample.'),
    groups: [{ title: message('Spreader plates'), paths: ['spreader'] }],
    lists: [{ at: 'brickKinds', one: message('kind of brick') }],
  },
  {
    id: 'galleries',
    title: message('Galleries and rails'),
    about: message('Where bricks are handled, and from where sets are flown.'),
    groups: [],
    lists: [
      { at: 'galleries', one: message('loading gallery') },
      { at: 'rails', one: message('rail') },
    ],
  },
  {
    id: 'kinds',
    title: message('Kinds of set'),
    about: message('What line sets have in common is said once; a set may say its own instead.'),
    groups: [],
    lists: [{ at: 'setTypes', one: message('kind of set'), groups: KIND_GROUPS }],
  },
  {
    id: 'sets',
    title: message('Line sets'),
    about: message('Number, kind and place of each; what a set does not say is from its kind.'),
    groups: [],
    lists: [{ at: 'lineSets', one: message('line set'), groups: SET_GROUPS }],
  },
  {
    id: 'beams',
    title: message('Head-block beam and loft wells'),
    about: message('What the building carries of all sets together.'),
    groups: [],
    lists: [
      { at: 'bays', one: message('bay') },
      { at: 'loftWells', one: message('loft well') },
    ],
  },
  {
    id: 'clear',
    title: message('Eyes, keep-outs and openings'),
    about: message('What the public sees, what must stay clear, and what opens in the deck.'),
    groups: [],
    lists: [
      { at: 'eyes', one: message('eye') },
      { at: 'keepOuts', one: message('keep-out') },
      { at: 'openings', one: message('opening') },
    ],
  },
  {
    id: 'aids',
    title: message('Bull lines, winches and other aids'),
    about: message('What the house owns to hold a set that its lock does not hold.'),
    groups: [],
    lists: [{ at: 'equipment', one: message('aid') }],
  },
];

/** The part whose form has a field, by the first words of its place; null where none has. */
export const partOf = (keys: readonly string[]): Part | null => {
  const [first = ''] = keys;
  return (
    PARTS.find(
      ({ groups, lists }) =>
        lists.some(({ at }) => at === first) ||
        groups.some(({ paths }) => paths.some((path) => path.split('.')[0] === first)),
    ) ?? null
  );
};
