/** The words for what may be unknown of a line set. */
import { message } from '#texts';
import { each, type FieldWords, field, purchase, travelling } from './unknown-field.ts';

const BALANCE = message('the balance over the travel, and the bricks');
const LINE_LOADS = message('what each line, block and bay carries');
const BENDING = message('whether the batten bends too far or yields');
const STRENGTH = message('the design factor of the lift lines');

export const LINE_SET: readonly FieldWords[] = [
  field('y', message('distance upstage'), message('clearances, and its place in drawings')),
  {
    ...field(
      'lineXs',
      message('places of the lift lines'),
      message('loads on lines, and the hanging card'),
    ),
    documentKeys: ['lines'],
  },
  purchase('lineMassPerLength', message('mass of a lift line for each length'), BALANCE),
  field('lineLimit', message('working load of a lift line'), message('the check of lift lines')),
  purchase('wireEndAbove', message('end of the wire above the batten'), BALANCE),
  field(
    'batten.left',
    message('right-hand end of the batten'),
    message('the hanging card and overhangs'),
  ),
  field(
    'batten.right',
    message('left-hand end of the batten'),
    message('the hanging card and overhangs'),
  ),
  field('batten.mass', message('mass of the batten'), BALANCE),
  field(
    'batten.massPerLength',
    message('mass of the tube for each length'),
    message('loads on lines'),
  ),
  field(
    'batten.fittingsPerLine',
    message('fittings at a line'),
    message('the cross-check of the batten'),
  ),
  field('batten.pipe.secondMoment', message('second moment of the tube'), LINE_LOADS),
  field('batten.pipe.elasticModulus', message('modulus of elasticity of the tube'), LINE_LOADS),
  field('batten.pipe.sectionModulus', message('section modulus of the tube'), BENDING),
  field('batten.pipe.plasticModulus', message('plastic modulus of the tube'), BENDING),
  field('batten.pipe.yieldStrength', message('yield strength of the tube'), BENDING),
  field(
    'batten.pipe.wall',
    message('wall that the tube values rest on'),
    message('how far they can be trusted'),
  ),
  field(
    'batten.splices',
    message('joints of the tube'),
    message('whether a joint is bent too far'),
  ),
  each(
    'batten.splices',
    'strength',
    message('strength of a joint'),
    message('whether it is bent too far'),
  ),
  field('lift.cable.axialStiffness', message('stiffness of the lift lines'), LINE_LOADS),
  field('lift.cable.breakingStrength', message('breaking strength of the lift lines'), STRENGTH),
  field('lift.cable.diameter', message('diameter of the lift lines'), STRENGTH),
  field('lift.cable.termination', message('how the line ends are made'), STRENGTH),
  field(
    'lift.lineTrims',
    message('trims of the lift lines'),
    message('whether the batten hangs as reckoned'),
  ),
  travelling('lift.loftBlock.sheaveDiameter', message('sheave of the loft blocks'), STRENGTH),
  travelling(
    'lift.loftBlock.rated',
    message('rating of the loft blocks'),
    message('the check of loft blocks'),
  ),
  travelling(
    'lift.loftBlock.fleetAngle',
    message('fleet angle at the loft blocks'),
    message('its check'),
  ),
  purchase('lift.headBlock.sheaveDiameter', message('sheave of the head block'), STRENGTH),
  purchase(
    'lift.headBlock.rated',
    message('rating of the head block'),
    message('the check of the head block'),
  ),
  purchase(
    'lift.headBlock.fleetAngle',
    message('fleet angle at the head block'),
    message('its check'),
  ),
  each(
    'lift.muleBlocks',
    'rated',
    message('rating of a mule block'),
    message('the check of mule blocks'),
  ),
  purchase(
    'lift.handLineMass',
    message('mass of the hand line'),
    message('what the head-block beam carries'),
  ),
  field('liveLimit', message('live limit of the batten'), message('whether too much hangs on it')),
  field(
    'pointLimit',
    message('point limit of the batten'),
    message('whether too much hangs at one place'),
  ),
  field(
    'perLengthLimit',
    message('limit for each length'),
    message('whether too much hangs on one length'),
  ),
  travelling(
    'lowStop.height',
    message('height of the low stop'),
    message('the travel, and all that depends on it'),
  ),
  purchase(
    'lowStop.rated',
    message('rating of the low stop'),
    message('whether a load may stand on it'),
  ),
  travelling(
    'highStop.height',
    message('height of the high stop'),
    message('the travel, and all that depends on it'),
  ),
  purchase(
    'highStop.rated',
    message('rating of the high stop'),
    message('whether a load may stand on it'),
  ),
  travelling(
    'workingHeight',
    message('working height'),
    message('the balance at the height where crews work'),
  ),
  purchase('arbor.carriageMass', message('mass of the carriage'), BALANCE),
  purchase('arbor.pipeWeight', message('pipe weight'), BALANCE),
  purchase(
    'arbor.length',
    message('length of the arbor'),
    message('whether it clears its head block'),
  ),
  purchase('arbor.usableRod', message('usable rod'), message('how many bricks the arbor takes')),
  purchase(
    'arbor.panAtLow',
    message('height of the pan'),
    message('the balance, and what a gallery reaches'),
  ),
  purchase(
    'arbor.panThickness',
    message('thickness of the pan'),
    message('what a gallery reaches'),
  ),
  purchase('arbor.attachAbovePan', message('where the lines meet the arbor'), BALANCE),
  purchase(
    'arbor.massLimit',
    message('mass limit of the arbor'),
    message('whether it is loaded past its limit'),
  ),
  purchase(
    'arbor.topClearance',
    message('clearance above the arbor'),
    message('whether it clears its head block'),
  ),
  purchase(
    'arbor.bottomClearance',
    message('clearance below the arbor'),
    message('whether it clears its stop'),
  ),
  purchase(
    'handLinePerBatten',
    message('travel of the hand line'),
    message('pulls on the hand line, pull tests'),
  ),
  purchase(
    'lock.grip',
    message('grip test of the rope lock'),
    message('whether it holds what the house allows'),
  ),
  {
    ...purchase('railId', message('rail'), message('from where it is flown')),
    documentKeys: ['rail'],
  },
];
