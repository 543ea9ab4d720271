/** The working of what is the same for a set in every state: pipe, lines and sheaves. */
import { measure, type Working } from '#findings';
import { knownTerm, numberOf, type StructureCase, sourceOf, term } from './working-terms.ts';

export const plantWorkings = (the: StructureCase): readonly Working[] => [
  pipeWorking(the),
  ...freeLengthWorkings(the),
  ...stiffnessWorkings(the),
  ...allowableWorkings(the),
  ...sheaveWorkings(the),
];

const pipeWorking = ({ lineSet, structure }: StructureCase): Working => {
  const { batten } = lineSet;
  return {
    title: 'Mass of the pipe along the batten',
    formula: '( B − n · f ) / l',
    terms: [
      knownTerm('B', 'batten with all its fittings', batten.mass, 'mass'),
      term('n', 'lift lines', measure(structure.lines.length, 'count')),
      knownTerm('f', 'fittings at each line', batten.fittingsPerLine, 'mass'),
      term('l', 'length of the batten', measure(structure.right - structure.left, 'length')),
    ],
    result: term('q', 'spread evenly', measure(structure.pipe.massPerLength, 'massPerLength')),
    limit: null,
    source: 'the whole is what the scale said; fittings lie at the lines',
  };
};

const freeLengthWorkings = ({ lineSet, house, structure }: StructureCase): readonly Working[] => {
  const [first] = structure.freeLengths;
  const { arbor, lowStop, wireEndAbove } = lineSet;
  const { loftBlockHeight, headBlockHeight } = house.stage;
  const loftM = numberOf(loftBlockHeight);
  const endM = numberOf(wireEndAbove);
  const lowM = numberOf(lowStop.height);
  const headM = numberOf(headBlockHeight);
  if (first === undefined || arbor === null) return [];
  const attachM = (numberOf(arbor.panAtLow) ?? Number.NaN) + (numberOf(arbor.attachAbovePan) ?? 0);
  if (loftM === null || endM === null || lowM === null || headM === null) return [];
  const purchase = lineSet.suspension === 'doublePurchase' ? 2 : 1;
  const upM = loftM - lowM - endM;
  const downM = purchase * (headM - attachM);
  return [
    {
      title: 'Free length of line 1',
      formula: 'u + a + d',
      terms: [
        term('u', 'loft block above the end of the wire, batten in', measure(upM, 'length')),
        term('a', 'from block to block, straight', measure(first - upM - downM, 'length')),
        term(
          'd',
          purchase === 2
            ? 'head block above the block of the arbor, both legs'
            : 'head block above the arbor',
          measure(downM, 'length'),
        ),
      ],
      result: term('l_1', 'all of the line that stretches', measure(first, 'length')),
      limit: null,
      source: 'geometry; it is the same at every height of the batten. All lines: in their table',
      omits: 'the bow over each sheave and the sag of a long run, which make it a little softer',
    },
  ];
};

const stiffnessWorkings = ({ lineSet, structure }: StructureCase): readonly Working[] => {
  const [line] = structure.lines;
  const [length] = structure.freeLengths;
  if (line === undefined || length === undefined || line.stiffness === null) return [];
  return [
    {
      title: 'Stiffness of line 1',
      formula: 'EA / l_1',
      terms: [
        knownTerm(
          'EA',
          'force over stretch for each length, of the rope as laid',
          lineSet.lift.cable.axialStiffness,
          'force',
        ),
        term('l_1', 'free length', measure(length, 'length')),
      ],
      result: term(
        'k_1',
        'pull for each length it is stretched',
        measure(line.stiffness, 'forcePerLength'),
      ),
      limit: null,
      source:
        'Hooke; a line that has settled. A new one first grows by up to 1 %, which is a length',
    },
  ];
};

const allowableWorkings = ({ lineSet, structure }: StructureCase): readonly Working[] => {
  const allowable = structure.states
    .flatMap(({ beam }) => ('unstable' in beam ? [] : [beam.allowable]))
    .find((each) => each !== null);
  if (allowable === undefined || allowable === null) return [];
  const { pipe } = lineSet.batten;
  const isPlastic = allowable.method === 'plastic';
  const modulus = isPlastic
    ? knownTerm('Z', 'plastic modulus', pipe.plasticModulus, 'sectionModulus')
    : knownTerm('S', 'elastic section modulus', pipe.sectionModulus, 'sectionModulus');
  return [
    {
      title: isPlastic
        ? 'Bending moment that the pipe is allowed, plastic'
        : 'Bending moment that the pipe is allowed, first yield',
      formula: `F_y · ${modulus.symbol} / ${allowable.factor}`,
      terms: [knownTerm('F_y', 'yield strength', pipe.yieldStrength, 'pressure'), modulus],
      result: term('M_a', 'allowed', measure(allowable.moment, 'moment')),
      limit: null,
      source: `AISC 360 section F8 for round sections, allowable strength, as quoted elsewhere; ${
        structure.wall === null ? 'wall not said' : `values of the ${structure.wall} wall`
      }`,
      omits: 'crushing at a clamp, holes and rust, each of which weakens the pipe',
    },
  ];
};

/** Both sheaves are held against the rule; the smaller bends the line harder. */
const sheaveWorkings = ({ lineSet, house }: StructureCase): readonly Working[] => {
  const { sheaveRatio } = house.rules;
  const { cable, loftBlock, headBlock } = lineSet.lift;
  if (!sheaveRatio.known || !cable.diameter.known) return [];
  const asked = sheaveRatio.value * cable.diameter.value;
  const blocks = [
    { name: 'loft blocks', block: loftBlock },
    { name: 'head block', block: headBlock },
  ];
  return blocks.map(({ name, block }): Working => {
    const { sheaveDiameter } = block;
    return {
      title: `Sheave of the ${name} against the line`,
      formula: `${sheaveRatio.value} · d`,
      terms: [knownTerm('d', 'diameter of the line', cable.diameter, 'length')],
      result: term('D_min', 'least sheave, at the groove', measure(asked, 'length')),
      limit: sheaveDiameter.known
        ? {
            value: measure(sheaveDiameter.value, 'length'),
            source: `the sheave as built: ${sourceOf(sheaveDiameter) ?? 'house'}`,
          }
        : null,
      source: sourceOf(sheaveRatio) ?? 'house rule',
    };
  });
};
