/** What tube, lines and blocks of one set say of one another. */
import { metresText } from './bounds.ts';
import { pathTo } from './json.ts';
import type { Subject } from './line-set-subject.ts';

export const checkPipe = (subject: Subject): void => {
  checkModuli(subject);
  checkSplices(subject);
};

/** The moment that yields a whole section is above the one that yields its edge, for any shape. */
const checkModuli = ({ set, faults, at }: Subject): void => {
  const { sectionModulus, plasticModulus } = set.batten.pipe;
  if (!sectionModulus.known || !plasticModulus.known) return;
  if (plasticModulus.value > sectionModulus.value) return;
  faults.refuse('plasticModulusSmall', at('batten', 'pipe', 'plasticModulus'), {
    found: `${cubicText(plasticModulus.value)}, with sectionModulus ${cubicText(
      sectionModulus.value,
    )}`,
    accepted: 'a plastic modulus above the section modulus, as every tube has it',
  });
};

/** A section modulus in a refusal, in both systems, since the reader may use either. */
const cubicText = (modulusM3: number): string =>
  `${(modulusM3 * 1e6).toFixed(2)} cm³ (${(modulusM3 / 0.0254 ** 3).toFixed(3)} in³)`;

const checkSplices = ({ set, faults, at }: Subject): void => {
  const { left, right, splices } = set.batten;
  const path = at('batten', 'splices');
  if (splices === null || !faults.sound(path, at('batten', 'left'))) return;
  for (const [index, { x }] of splices.entries()) {
    const isOff = (left.known && x <= left.value) || (right.known && x >= right.value);
    if (!isOff) continue;
    faults.refuse('spliceOffBatten', pathTo(pathTo(path, index), 'x'), {
      found: metresText(x),
      accepted: 'a place between the ends of the batten',
    });
  }
};

export const checkLift = (subject: Subject): void => {
  const { set, faults, at } = subject;
  if (set.lineXs === null || !faults.sound(at('lines'))) return;
  checkTrims(set.lineXs.length, subject);
  checkMules(set.lineXs.length, subject);
};

const checkTrims = (lines: number, { set, faults, at }: Subject): void => {
  const { lineTrims } = set.lift;
  const path = at('lift', 'lineTrims');
  if (lineTrims === null || lineTrims.length === lines || !faults.sound(path)) return;
  faults.refuse('trimsMiscounted', path, {
    found: `${lineTrims.length}, with ${lines} lift lines`,
    accepted: 'one for each line from stage right, "0 mm" where it is true, or {"unknown": "why"}',
  });
};

const checkMules = (lines: number, { set, faults, at }: Subject): void => {
  const path = at('lift', 'muleBlocks');
  for (const [index, { line }] of set.lift.muleBlocks.entries()) {
    const here = pathTo(pathTo(path, index), 'line');
    if (line <= lines || !faults.sound(here)) continue;
    faults.refuse('lineUnknown', here, {
      found: `line ${line}, with ${lines} lift lines`,
      accepted: `1 to ${lines}, counted from stage right`,
    });
  }
};
