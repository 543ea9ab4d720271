import type { LineState, SetAssessment, SetStructure } from '#assessment';
import { measure } from '#findings';
import type { House } from '#house';
import { acrossStage } from '../across-stage.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { type HouseRule, type StructuredCase, whenStructured } from '../rule.ts';
import { setList } from '../set-list.ts';
import { worstBy } from '../worst.ts';

/** As little as a crew turns a turnbuckle by: an eighth of an inch, or 3 mm. */
const STEP_M: Readonly<Record<House['units'], number>> = { customary: 0.0254 / 8, metric: 0.003 };

/** From this share of the limit of a line on, such a step is worth measuring. Ours. */
const MATTERS = 0.1;

type Turned = {
  readonly set: SetAssessment;
  readonly number: number;
  readonly line: LineState;
  readonly movedN: number;
};

/**
 * LFT-010: lines that nobody has measured are reckoned true. Said once for the house, with the
 * line that answers most to being a step of a turnbuckle out.
 */
export const linesTakenTrue: HouseRule = ({ house, assessment }) => {
  const unmeasured = assessment.sets.filter(
    ({ structure }) => structure.known && !structure.value.trimsMeasured,
  );
  const most = worstBy(
    unmeasured.flatMap((set) =>
      set.structure.known ? turnedLines(house, set, set.structure.value) : [],
    ),
    ({ movedN }) => movedN,
  );
  if (most === undefined) return [];
  return [
    raise('LFT-010', {
      at: {},
      measured: measure(most.movedN, 'force'),
      facts: {
        sets: setList(
          house,
          unmeasured.map(({ lineSet }) => lineSet),
        ),
        step: measure(STEP_M[house.units], 'length'),
        line: measure(most.number, 'count'),
        most: most.set.lineSet.id,
      },
    }),
  ];
};

/**
 * LFT-011: on a stiff batten a step of a turnbuckle moves more than a tenth of the limit of a line:
 * there what is reckoned with true lines may be far from what is, and the lines want measuring.
 */
export const lengthMatters = whenStructured((the) => {
  const { lineSet } = the.set;
  // A limit that is not known is missed by LFT-001.
  if (the.structure.trimsMeasured || !lineSet.lineLimit.known) return [];
  const limitN = MATTERS * lineSet.lineLimit.value;
  const over = turnedLines(the.house, the.set, the.structure).filter(({ movedN }) =>
    isAbove(movedN, limitN),
  );
  const most = worstBy(over, ({ movedN }) => movedN);
  if (most === undefined) return [];
  return [raisedFor(the, most, limitN)];
});

const raisedFor = (the: StructuredCase, { number, line, movedN }: Turned, limitN: number) =>
  raise('LFT-011', {
    at: { set: the.set.lineSet.id },
    measured: measure(movedN, 'force'),
    limit: measure(limitN, 'force'),
    limitSource: 'a tenth of the limit of a line: ours, no source',
    facts: {
      step: measure(STEP_M[the.house.units], 'length'),
      line: measure(number, 'count'),
      ...acrossStage(line.x),
    },
  });

const turnedLines = (
  { units }: House,
  set: SetAssessment,
  { states }: SetStructure,
): readonly Turned[] =>
  states.flatMap(({ lines }) =>
    lines.map((line, index) => ({
      set,
      number: index + 1,
      line,
      movedN: STEP_M[units] * line.perTrim,
    })),
  );
