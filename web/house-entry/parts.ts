/** The order in which a house is entered, and which field stands where. */

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
    title: 'How it is carried',
    paths: ['given', 'suspension', 'extends', 'rail', 'handLinePerBatten', 'remark'],
  },
  { title: 'Travel', paths: ['lowStop', 'highStop', 'workingHeight'] },
  {
    title: 'Batten',
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
    title: 'Lift lines',
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
  { title: 'Blocks', paths: ['lift.loftBlock', 'lift.headBlock', 'lift.muleBlocks'] },
  { title: 'Arbor', paths: ['arbor'] },
];

/** What one set says that its kind does not; the rest is from its kind until it is typed here. */
const SET_GROUPS: readonly Group[] = [
  { title: 'Of this set alone', paths: ['given', 'id', 'type', 'y', 'rail', 'remark', 'lock'] },
  { title: 'How it is carried', paths: ['suspension', 'handLinePerBatten'] },
  ...KIND_GROUPS.slice(1),
];

export const PARTS: readonly Part[] = [
  {
    id: 'house',
    title: 'Name, units and words',
    about: 'What the house is called, and how it speaks.',
    groups: [
      {
        title: 'The house',
        paths: ['name', 'units', 'words', 'language', 'demo', 'given', 'remarks'],
      },
      { title: 'Written by the program', paths: ['id', 'format', 'version', '$schema'] },
    ],
    lists: [],
  },
  {
    id: 'stage',
    title: 'Stage',
    about: 'Heights are above the deck, upstage is from the plaster line.',
    groups: [{ title: 'Stage', paths: ['stage'] }],
    lists: [],
  },
  {
    id: 'rules',
    title: 'Rules of the house',
    about: 'The house sets these itself; none has a default.',
    groups: [
      {
        title: 'Holding and pulling',
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
        title: 'Lines, sheaves and beams',
        paths: [
          'rules.clipsForbidden',
          'rules.lineDesignFactor',
          'rules.sheaveRatio',
          'rules.fleetAngleLimit',
          'rules.movingShare',
          'rules.sagLimit',
        ],
      },
      { title: 'What may be believed', paths: ['rules.staleAfter', 'rules.toleranceByBasis'] },
    ],
    lists: [],
  },
  {
    id: 'bricks',
    title: 'Bricks and spreader plates',
    about: 'The mass of each kind is this house’s own, from a weighed sample.',
    groups: [{ title: 'Spreader plates', paths: ['spreader'] }],
    lists: [{ at: 'brickKinds', one: 'kind of brick' }],
  },
  {
    id: 'galleries',
    title: 'Galleries and rails',
    about: 'Where bricks are handled, and from where sets are flown.',
    groups: [],
    lists: [
      { at: 'galleries', one: 'loading gallery' },
      { at: 'rails', one: 'rail' },
    ],
  },
  {
    id: 'kinds',
    title: 'Kinds of set',
    about: 'What line sets have in common is said once; a set may say its own instead.',
    groups: [],
    lists: [{ at: 'setTypes', one: 'kind of set', groups: KIND_GROUPS }],
  },
  {
    id: 'sets',
    title: 'Line sets',
    about: 'Number, kind and place of each; what a set does not say is from its kind.',
    groups: [],
    lists: [{ at: 'lineSets', one: 'line set', groups: SET_GROUPS }],
  },
  {
    id: 'beams',
    title: 'Head-block beam and loft wells',
    about: 'What the building carries of all sets together.',
    groups: [],
    lists: [
      { at: 'bays', one: 'bay' },
      { at: 'loftWells', one: 'loft well' },
    ],
  },
  {
    id: 'clear',
    title: 'Eyes, keep-outs and openings',
    about: 'What the public sees, what must stay clear, and what opens in the deck.',
    groups: [],
    lists: [
      { at: 'eyes', one: 'eye' },
      { at: 'keepOuts', one: 'keep-out' },
      { at: 'openings', one: 'opening' },
    ],
  },
  {
    id: 'aids',
    title: 'Bull lines, winches and other aids',
    about: 'What the house owns to hold a set that its lock does not hold.',
    groups: [],
    lists: [{ at: 'equipment', one: 'aid' }],
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
