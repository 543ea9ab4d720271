/** The words for each field that may be unknown, and for what waits for it. */
import { message } from '#texts';
import { type FieldWords, field } from './unknown-field.ts';

const SECTION = message('the section drawing and what the public sees');

export const STAGE: readonly FieldWords[] = [
  field('openingWidth', message('width of the opening'), SECTION),
  field('openingHeight', message('height of the opening'), SECTION),
  field('backWall', message('distance of the back wall'), message('the plan drawing')),
  field('gridHeight', message('height of the grid'), message('whether a piece clears the grid')),
  field(
    'loftBlockHeight',
    message('height of the loft blocks'),
    message('the lengths of the lift lines'),
  ),
  field(
    'headBlockHeight',
    message('height of the head blocks'),
    message('whether an arbor clears its head block'),
  ),
  field('operatingX', message('place of the operating wall'), message('the plan drawing')),
];

export const RULES: readonly FieldWords[] = [
  field(
    'lockLimit',
    message('limit of the rope lock'),
    message('every check of what a lock may hold'),
  ),
  {
    ...field(
      'lockTestEverySeconds',
      message('age at which a lock is tested again'),
      message('which grip tests are due'),
    ),
    documentKeys: ['lockTestEvery'],
  },
  field(
    'handLineLimit',
    message('working load of the hand line'),
    message('the check of pulls on the hand line'),
  ),
  field(
    'pullBrief',
    message('brief pull of one person'),
    message('whether a set can be started by hand'),
  ),
  field(
    'pullSteady',
    message('steady pull of one person'),
    message('whether a set can be moved by hand'),
  ),
  field(
    'peoplePerHandLine',
    message('people on one hand line'),
    message('whether enough people can pull'),
  ),
  field(
    'frictionShare',
    message('share of friction'),
    message('pulls on a set without a pull test'),
  ),
  field(
    'frictionConstant',
    message('fixed part of friction'),
    message('pulls on a set without a pull test'),
  ),
  field('clipsForbidden', message('rule on wire rope clips'), message('the check of terminations')),
  field(
    'lineDesignFactor',
    message('design factor of lift lines'),
    message('the check of their strength'),
  ),
  field('sheaveRatio', message('ratio of sheave to line'), message('the check of sheaves')),
  field(
    'fleetAngleLimit',
    message('limit of the fleet angle'),
    message('the check of fleet angles'),
  ),
  field(
    'movingShare',
    message('share for a moving set'),
    message('what beams carry while a set moves'),
  ),
  field('sagLimit', message('limit of sag'), message('whether a batten sags too far')),
  {
    ...field(
      'staleAfterSeconds',
      message('age at which a record is stale'),
      message('whether a record may be used'),
    ),
    documentKeys: ['staleAfter'],
  },
];

export const BRICK: readonly FieldWords[] = [
  field(
    'mass',
    message('mass'),
    message('every arbor with this kind on it, and the choice of bricks'),
  ),
  field(
    'thickness',
    message('thickness'),
    message('the height of stacks, and what a gallery reaches'),
  ),
  field(
    'floorLength',
    message('length on the floor'),
    message('what a gallery floor carries along its length'),
  ),
  field('owned', message('number owned'), message('whether there are enough bricks for the show')),
];

export const SPREADER: readonly FieldWords[] = [
  field('mass', message('mass'), message('the mass of every arbor that has them')),
  field(
    'thickness',
    message('thickness'),
    message('the height of stacks, and what a gallery reaches'),
  ),
  field('every', message('spacing'), message('how many of them a stack takes')),
];

export const GALLERY: readonly FieldWords[] = [
  field('floor', message('floor height'), message('which bricks can be handled from it')),
  field('reachLow', message('lowest reach'), message('which bricks can be handled from it')),
  field('reachHigh', message('highest reach'), message('which bricks can be handled from it')),
  field('length', message('length'), message('what its floor carries')),
  field('width', message('width'), message('what its floor carries')),
  field(
    'floorLimit',
    message('limit of the floor'),
    message('whether the bricks on it are too many'),
  ),
  field(
    'lineLoadLimit',
    message('limit for each length'),
    message('whether the bricks on it are too many'),
  ),
  field('coursesAllowed', message('courses allowed'), message('how bricks may be stacked on it')),
  field('peopleAndTools', message('people and tools'), message('what its floor carries')),
];

export const RAIL: readonly FieldWords[] = [
  field('floor', message('floor height'), message('where its operators stand in drawings')),
];

export const BAY: readonly FieldWords[] = [
  field(
    'verticalLimit',
    message('vertical limit'),
    message('whether the head-block beam carries its sets'),
  ),
  field(
    'horizontalLimit',
    message('horizontal limit'),
    message('whether the head-block beam carries its sets'),
  ),
];

export const LOFT_WELL: readonly FieldWords[] = [
  field('limit', message('limit'), message('whether it carries the lines on it')),
];

export const EQUIPMENT: readonly FieldWords[] = [
  field('rating', message('rating'), message('every use of it to hold something')),
];

export const HANG: readonly FieldWords[] = [
  field('halfDepth', message('depth up and down stage'), message('clearances to its neighbours')),
];

export const TRIM: readonly FieldWords[] = [
  field(
    'height',
    message('height'),
    message('the balance at this height, and the range for the bricks'),
  ),
];

export const DEAD_HUNG: readonly FieldWords[] = [
  field('deadHungAt', message('dead-hung height'), message('the check of its height')),
];

export const ITEM: readonly FieldWords[] = [
  field('drop', message('drop'), message('where it meets the deck, and so the balance of its set')),
  field(
    'pick',
    message('length of the picks'),
    message('where it meets the deck, and so the balance of its set'),
  ),
];

export const PLACEMENT: readonly FieldWords[] = [
  field(
    'placement',
    message('place along the batten'),
    message('the hanging card and loads on lines'),
  ),
];

export const CENTRE: readonly FieldWords[] = [
  field(
    'centre',
    message('centre of gravity'),
    message('the load while it tips, and so the balance of its set'),
  ),
];

export const RELEASE: readonly FieldWords[] = [
  field('mass', message('mass that leaves'), message('the balance after the release')),
];

/** `areaMass` as "area mass". */
export const takeoffWords = (key: string): string =>
  key.replace(/\[\d+\]$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
