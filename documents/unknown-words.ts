/** The words for each field that may be unknown, and for what waits for it. */

export type FieldWords = {
  readonly keys: readonly string[];
  /** Where the document names the field otherwise than the engine. */
  readonly documentKeys?: readonly string[];
  readonly what: string;
  readonly blocks: string;
  /** Where a list is known and something in its entries may not be. */
  readonly each?: readonly string[];
  /** Which sets it matters on: those with an arbor, those that travel; absent, all of them. */
  readonly only?: 'purchase' | 'travelling';
};

const field = (key: string, what: string, blocks: string): FieldWords => ({
  keys: key.split('.'),
  what,
  blocks,
});

const purchase = (key: string, what: string, blocks: string): FieldWords => ({
  ...field(key, what, blocks),
  only: 'purchase',
});

const travelling = (key: string, what: string, blocks: string): FieldWords => ({
  ...field(key, what, blocks),
  only: 'travelling',
});

const each = (key: string, inner: string, what: string, blocks: string): FieldWords => ({
  ...field(key, what, blocks),
  each: [inner],
});

const BALANCE = 'the balance over the travel, and the bricks';
const LINE_LOADS = 'what each line, block and bay carries';
const BENDING = 'whether the batten bends too far or yields';
const STRENGTH = 'the design factor of the lift lines';
const SECTION = 'the section drawing and what the public sees';

export const STAGE: readonly FieldWords[] = [
  field('openingWidth', 'width of the opening', SECTION),
  field('openingHeight', 'height of the opening', SECTION),
  field('backWall', 'distance of the back wall', 'the plan drawing'),
  field('gridHeight', 'height of the grid', 'whether a piece clears the grid'),
  field('loftBlockHeight', 'height of the loft blocks', 'the lengths of the lift lines'),
  field('headBlockHeight', 'height of the head blocks', 'whether an arbor clears its head block'),
  field('operatingX', 'place of the operating wall', 'the plan drawing'),
];

export const RULES: readonly FieldWords[] = [
  field('lockLimit', 'limit of the rope lock', 'every check of what a lock may hold'),
  {
    ...field(
      'lockTestEverySeconds',
      'age at which a lock is tested again',
      'which grip tests are due',
    ),
    documentKeys: ['lockTestEvery'],
  },
  field('handLineLimit', 'working load of the hand line', 'the check of pulls on the hand line'),
  field('pullBrief', 'brief pull of one person', 'whether a set can be started by hand'),
  field('pullSteady', 'steady pull of one person', 'whether a set can be moved by hand'),
  field('peoplePerHandLine', 'people on one hand line', 'whether enough people can pull'),
  field('frictionShare', 'share of friction', 'pulls on a set without a pull test'),
  field('frictionConstant', 'fixed part of friction', 'pulls on a set without a pull test'),
  field('clipsForbidden', 'rule on wire rope clips', 'the check of terminations'),
  field('lineDesignFactor', 'design factor of lift lines', 'the check of their strength'),
  field('sheaveRatio', 'ratio of sheave to line', 'the check of sheaves'),
  field('fleetAngleLimit', 'limit of the fleet angle', 'the check of fleet angles'),
  field('movingShare', 'share for a moving set', 'what beams carry while a set moves'),
  field('sagLimit', 'limit of sag', 'whether a batten sags too far'),
  {
    ...field('staleAfterSeconds', 'age at which a record is stale', 'whether a record may be used'),
    documentKeys: ['staleAfter'],
  },
];

export const BRICK: readonly FieldWords[] = [
  field('mass', 'mass', 'every arbor with this kind on it, and the choice of bricks'),
  field('thickness', 'thickness', 'the height of stacks, and what a gallery reaches'),
  field('floorLength', 'length on the floor', 'what a gallery floor carries along its length'),
  field('owned', 'number owned', 'whether there are enough bricks for the show'),
];

export const SPREADER: readonly FieldWords[] = [
  field('mass', 'mass', 'the mass of every arbor that has them'),
  field('thickness', 'thickness', 'the height of stacks, and what a gallery reaches'),
  field('every', 'spacing', 'how many of them a stack takes'),
];

export const GALLERY: readonly FieldWords[] = [
  field('floor', 'floor height', 'which bricks can be handled from it'),
  field('reachLow', 'lowest reach', 'which bricks can be handled from it'),
  field('reachHigh', 'highest reach', 'which bricks can be handled from it'),
  field('length', 'length', 'what its floor carries'),
  field('width', 'width', 'what its floor carries'),
  field('floorLimit', 'limit of the floor', 'whether the bricks on it are too many'),
  field('lineLoadLimit', 'limit for each length', 'whether the bricks on it are too many'),
  field('coursesAllowed', 'courses allowed', 'how bricks may be stacked on it'),
  field('peopleAndTools', 'people and tools', 'what its floor carries'),
];

export const RAIL: readonly FieldWords[] = [
  field('floor', 'floor height', 'where its operators stand in drawings'),
];

export const BAY: readonly FieldWords[] = [
  field('verticalLimit', 'vertical limit', 'whether the head-block beam carries its sets'),
  field('horizontalLimit', 'horizontal limit', 'whether the head-block beam carries its sets'),
];

export const LOFT_WELL: readonly FieldWords[] = [
  field('limit', 'limit', 'whether it carries the lines on it'),
];

export const EQUIPMENT: readonly FieldWords[] = [
  field('rating', 'rating', 'every use of it to hold something'),
];

export const LINE_SET: readonly FieldWords[] = [
  field('y', 'distance upstage', 'clearances, and its place in drawings'),
  {
    ...field('lineXs', 'places of the lift lines', 'loads on lines, and the hanging card'),
    documentKeys: ['lines'],
  },
  purchase('lineMassPerLength', 'mass of a lift line for each length', BALANCE),
  field('lineLimit', 'working load of a lift line', 'the check of lift lines'),
  purchase('wireEndAbove', 'end of the wire above the batten', BALANCE),
  field('batten.left', 'right-hand end of the batten', 'the hanging card and overhangs'),
  field('batten.right', 'left-hand end of the batten', 'the hanging card and overhangs'),
  field('batten.mass', 'mass of the batten', BALANCE),
  field('batten.massPerLength', 'mass of the tube for each length', 'loads on lines'),
  field('batten.fittingsPerLine', 'fittings at a line', 'the cross-check of the batten'),
  field('batten.pipe.secondMoment', 'second moment of the tube', LINE_LOADS),
  field('batten.pipe.elasticModulus', 'modulus of elasticity of the tube', LINE_LOADS),
  field('batten.pipe.sectionModulus', 'section modulus of the tube', BENDING),
  field('batten.pipe.plasticModulus', 'plastic modulus of the tube', BENDING),
  field('batten.pipe.yieldStrength', 'yield strength of the tube', BENDING),
  field('batten.pipe.wall', 'wall that the tube values rest on', 'how far they can be trusted'),
  field('batten.splices', 'joints of the tube', 'whether a joint is bent too far'),
  each('batten.splices', 'strength', 'strength of a joint', 'whether it is bent too far'),
  field('lift.cable.axialStiffness', 'stiffness of the lift lines', LINE_LOADS),
  field('lift.cable.breakingStrength', 'breaking strength of the lift lines', STRENGTH),
  field('lift.cable.diameter', 'diameter of the lift lines', STRENGTH),
  field('lift.cable.termination', 'how the line ends are made', STRENGTH),
  field('lift.lineTrims', 'trims of the lift lines', 'whether the batten hangs as reckoned'),
  travelling('lift.loftBlock.sheaveDiameter', 'sheave of the loft blocks', STRENGTH),
  travelling('lift.loftBlock.rated', 'rating of the loft blocks', 'the check of loft blocks'),
  travelling('lift.loftBlock.fleetAngle', 'fleet angle at the loft blocks', 'its check'),
  purchase('lift.headBlock.sheaveDiameter', 'sheave of the head block', STRENGTH),
  purchase('lift.headBlock.rated', 'rating of the head block', 'the check of the head block'),
  purchase('lift.headBlock.fleetAngle', 'fleet angle at the head block', 'its check'),
  each('lift.muleBlocks', 'rated', 'rating of a mule block', 'the check of mule blocks'),
  purchase('lift.handLineMass', 'mass of the hand line', 'what the head-block beam carries'),
  field('liveLimit', 'live limit of the batten', 'whether too much hangs on it'),
  field('pointLimit', 'point limit of the batten', 'whether too much hangs at one place'),
  field('perLengthLimit', 'limit for each length', 'whether too much hangs on one length'),
  travelling('lowStop.height', 'height of the low stop', 'the travel, and all that depends on it'),
  purchase('lowStop.rated', 'rating of the low stop', 'whether a load may stand on it'),
  travelling(
    'highStop.height',
    'height of the high stop',
    'the travel, and all that depends on it',
  ),
  purchase('highStop.rated', 'rating of the high stop', 'whether a load may stand on it'),
  travelling('workingHeight', 'working height', 'the balance at the height where crews work'),
  purchase('arbor.carriageMass', 'mass of the carriage', BALANCE),
  purchase('arbor.pipeWeight', 'pipe weight', BALANCE),
  purchase('arbor.length', 'length of the arbor', 'whether it clears its head block'),
  purchase('arbor.usableRod', 'usable rod', 'how many bricks the arbor takes'),
  purchase('arbor.panAtLow', 'height of the pan', 'the balance, and what a gallery reaches'),
  purchase('arbor.panThickness', 'thickness of the pan', 'what a gallery reaches'),
  purchase('arbor.attachAbovePan', 'where the lines meet the arbor', BALANCE),
  purchase('arbor.massLimit', 'mass limit of the arbor', 'whether it is loaded past its limit'),
  purchase('arbor.topClearance', 'clearance above the arbor', 'whether it clears its head block'),
  purchase('arbor.bottomClearance', 'clearance below the arbor', 'whether it clears its stop'),
  purchase('handLinePerBatten', 'travel of the hand line', 'pulls on the hand line, pull tests'),
  purchase('lock.grip', 'grip test of the rope lock', 'whether it holds what the house allows'),
  {
    ...purchase('railId', 'rail', 'from where it is flown'),
    documentKeys: ['rail'],
  },
];

export const HANG: readonly FieldWords[] = [
  field('halfDepth', 'depth up and down stage', 'clearances to its neighbours'),
];

export const TRIM: readonly FieldWords[] = [
  field('height', 'height', 'the balance at this height, and the range for the bricks'),
];

export const DEAD_HUNG: readonly FieldWords[] = [
  field('deadHungAt', 'dead-hung height', 'the check of its height'),
];

export const ITEM: readonly FieldWords[] = [
  field('drop', 'drop', 'where it meets the deck, and so the balance of its set'),
  field('pick', 'length of the picks', 'where it meets the deck, and so the balance of its set'),
];

export const PLACEMENT: readonly FieldWords[] = [
  field('placement', 'place along the batten', 'the hanging card and loads on lines'),
];

export const CENTRE: readonly FieldWords[] = [
  field('centre', 'centre of gravity', 'the load while it tips, and so the balance of its set'),
];

export const RELEASE: readonly FieldWords[] = [
  field('mass', 'mass that leaves', 'the balance after the release'),
];

/** `areaMass` as "area mass". */
export const takeoffWords = (key: string): string =>
  key.replace(/\[\d+\]$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
