/**
 * What must hold of the answer for any batten, asked without the program's own reckoning: whether
 * it is a mechanism follows from where its weight lies, and the rest from the balance of forces
 * and from what a line can do.
 */
import type { BattenAnswer, BattenCase, BattenSolution, Load } from '#beam';

const GRAVITY = 9.80665;

type Weight = { readonly forceN: number; readonly momentNm: number };

const weightOf = (loads: readonly Load[]): Weight => {
  const parts = loads.map((load) => ({
    forceN: load.mass * GRAVITY,
    x: 'x' in load ? load.x : (load.from + load.to) / 2,
  }));
  return {
    forceN: parts.reduce((sum, { forceN }) => sum + forceN, 0),
    momentNm: parts.reduce((sum, { forceN, x }) => sum + forceN * x, 0),
  };
};

export const wholeWeight = ({ pipe, left, right, loads, pieces = [] }: BattenCase): Weight =>
  weightOf([
    { from: left, to: right, mass: pipe.massPerLength * (right - left) },
    ...loads,
    ...pieces.flatMap((piece) => piece.loads),
  ]);

/**
 * Whether nothing can hold it: no weight, one place to hang from, or with lines that only pull a
 * weight not between the outermost places. Null where that is a matter of a hair.
 */
export const isMechanism = (the: BattenCase): boolean | null => {
  const { forceN, momentNm } = wholeWeight(the);
  if (forceN === 0 && the.tensionOnly !== false) return true;
  const xs = [...the.lines, ...(the.supports ?? [])].map(({ x }) => x);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  if (least === most) return true;
  if (the.tensionOnly === false) return false;
  const at = momentNm / forceN;
  const hair = 1e-7 * (the.right - the.left);
  // Just below one line it may hang from that line alone, free to turn, or be held by others.
  if (xs.some((x) => Math.abs(at - x) < hair)) return null;
  return at < least || at > most;
};

const finiteFaults = (what: string, values: readonly number[]): readonly string[] =>
  values.every(Number.isFinite) ? [] : [`${what} is not all numbers`];

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

/** Faults of an answer; none is right. */
export const judgeBatten = (the: BattenCase, answer: BattenAnswer): readonly string[] => {
  const mechanism = isMechanism(the);
  if ('unstable' in answer) {
    return mechanism === false ? [`no answer: ${answer.unstable.code}`] : [];
  }
  if (mechanism === true) return ['an answer for a mechanism'];
  return [
    ...numberFaults(answer),
    ...rigidFaults(the, answer),
    ...signFaults(the, answer),
    ...balanceFaults(the, answer),
    ...gapFaults(the, answer),
  ];
};

const numberFaults = (answer: BattenSolution): readonly string[] => {
  const { moment, shear, deflection, sag, stress, utilisation } = answer;
  const rigid = answer.rigid();
  return [
    ...finiteFaults('tensions', [...answer.tensions, ...answer.supports, ...answer.picks.flat()]),
    ...finiteFaults(
      'extremes',
      [moment, shear, deflection].flatMap(({ max, min }) => [max.x, max.value, min.x, min.value]),
    ),
    ...finiteFaults('deflection at lines', deflection.atLines),
    ...finiteFaults('sag', sag === null ? [] : [sag.x, sag.value, sag.span]),
    ...finiteFaults('stress', [stress ?? 0, utilisation?.value ?? 0]),
    ...finiteFaults('sensitivity', answer.sensitivity().flat()),
    ...finiteFaults('rigid', rigid === null ? [] : rigid.tensions),
  ];
};

/** Without stands and pieces, lines that do not stretch share in one way and no other. */
const rigidFaults = (the: BattenCase, answer: BattenSolution): readonly string[] => {
  const isBare = (the.supports ?? []).length + (the.pieces ?? []).length === 0;
  const rigid = answer.rigid();
  if (rigid === null) {
    return isBare && isMechanism(the) === false ? ['no answer for rigid lines'] : [];
  }
  return isBare ? balanceOf(the, rigid.tensions, 'rigid: ') : [];
};

const signFaults = (the: BattenCase, answer: BattenSolution): readonly string[] => {
  const { tensions, slack } = answer;
  if (the.tensionOnly === false) return slack.includes(true) ? ['slack where none may be'] : [];
  const pulls = [...tensions, ...answer.supports, ...answer.picks.flat()];
  const rigid = answer.rigid()?.tensions ?? [];
  return [
    ...looseFaults(the, answer),
    ...(pulls.some((each) => each < 0) ? ['a line pushes'] : []),
    ...(rigid.some((each) => each < 0) ? ['a rigid line pushes'] : []),
    ...(tensions.some((each, i) => slack[i] === true && each !== 0) ? ['slack, yet pulls'] : []),
  ];
};

/** One line may carry all only where others beside it, on both sides, are just about to. */
const looseFaults = (the: BattenCase, answer: BattenSolution): readonly string[] => {
  const ties = [...the.lines, ...(the.supports ?? [])];
  const pulls = [...answer.tensions, ...answer.supports];
  const carrying = ties.filter((_, i) => (pulls[i] ?? 0) > 0);
  if (carrying.length !== 1) return [];
  const [alone] = carrying;
  const touching = the.lines.filter((_, i) => answer.slack[i] === false);
  const isHeld = [-1, 1].every((side) =>
    touching.some(({ x }) => Math.sign(x - (alone?.x ?? x)) === side),
  );
  return isHeld ? [] : ['an answer for what hangs from one line alone'];
};

/** A part in 10⁹ of the weight: rounding of a system of twenty, and nothing that a load does. */
const BALANCE = 1e-9;

const balanceFaults = (the: BattenCase, answer: BattenSolution): readonly string[] =>
  balanceOf(the, [...answer.tensions, ...answer.supports]);

const balanceOf = (the: BattenCase, pulls: readonly number[], of = ''): readonly string[] => {
  const { forceN, momentNm } = wholeWeight(the);
  const ties = [...the.lines, ...(the.supports ?? [])];
  const lengthM = the.right - the.left;
  const off = sum(pulls) - forceN;
  const turned = sum(pulls.map((each, i) => each * (ties[i]?.x ?? 0))) - momentNm;
  const scaleN = Math.max(forceN, ...pulls.map(Math.abs));
  return [
    ...(Math.abs(off) <= BALANCE * scaleN ? [] : [`${of}forces are off by ${off} of ${forceN} N`]),
    ...(Math.abs(turned) <= BALANCE * scaleN * lengthM
      ? []
      : [`${of}moments are off by ${turned} N·m`]),
  ];
};

const gapFaults = (the: BattenCase, answer: BattenSolution): readonly string[] => {
  const { tensions, slack, deflection } = answer;
  const scaleM = Math.max(
    1e-3,
    ...deflection.atLines.map(Math.abs),
    ...the.lines.map(({ trim = 0 }) => Math.abs(trim)),
    Math.abs(deflection.max.value),
    Math.abs(deflection.min.value),
  );
  return the.lines.flatMap(({ stiffness, trim = 0 }, i) => {
    const gap = (deflection.atLines[i] ?? Number.NaN) + trim;
    if (slack[i] === true) return gap <= 1e-7 * scaleM ? [] : [`line ${i} is slack, yet short`];
    const stretch = stiffness === null ? 0 : (tensions[i] ?? 0) / stiffness;
    const off = Math.abs(gap - stretch);
    return off <= 1e-7 * scaleM ? [] : [`line ${i} is off its stretch by ${off} m of ${scaleM}`];
  });
};
