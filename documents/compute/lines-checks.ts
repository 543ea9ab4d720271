/** What the numbers about lines and totals say of one another, where each is right by itself. */
import { metresText } from '../bounds.ts';
import type { Faults } from '../faults.ts';
import { describe, pathTo } from '../json.ts';
import { refuseDuplicates, refuseUnknown } from '../references.ts';
import type { LinesInput, TotalsInput } from './lines-inputs.ts';

export const checkLines = (input: LinesInput, faults: Faults): void => {
  const ends = [
    ['wireEndHeight', input.wireEndHeight, input.loftHeight, 'loft blocks'],
    ['attachHeight', input.attachHeight, input.headHeight, 'head block'],
  ] as const;
  for (const [field, end, block, name] of ends) {
    if (end < block) continue;
    faults.refuse('boundsReversed', field, {
      found: `${metresText(end)}, with the ${name} at ${metresText(block)}`,
      accepted: `a height below the ${name}`,
    });
  }
  for (const [index, { x }] of input.lines.entries()) {
    const before = input.lines[index - 1];
    if (before === undefined || before.x < x) continue;
    faults.refuse('linesDisordered', pathTo(pathTo('lines', index), 'x'), {
      found: `${metresText(x)} after ${metresText(before.x)}`,
      accepted: 'lines from stage right to stage left, each at a place of its own',
    });
  }
  checkBridles(input, faults);
};

const checkBridles = (input: LinesInput, faults: Faults): void => {
  for (const [index, { left, right }] of (input.bridles ?? []).entries()) {
    if (left + right > 0) continue;
    faults.refuse('zero', pathTo(pathTo('bridles', index), 'right'), {
      found: 'both legs straight up from one place',
      accepted: 'upper ends apart from each other',
    });
  }
};

export const checkTotals = (input: TotalsInput, faults: Faults): void => {
  for (const [index, bay] of input.bays.entries()) {
    if (input.bays.indexOf(bay) === index) continue;
    faults.refuse('duplicateId', pathTo('bays', index), {
      found: `${describe(bay)}, which is in the list before`,
      accepted: 'each bay once',
    });
  }
  refuseDuplicates(input.wells, 'wells', faults);
  refuseDuplicates(input.floors ?? [], 'floors', faults);
  checkWells(input.wells, faults);
  for (const [at, { sets }] of input.states.entries()) {
    const path = pathTo(pathTo(pathTo('', 'states'), at), 'sets');
    checkSets(input, sets, path, faults);
  }
};

type Sets = TotalsInput['states'][number]['sets'];

const checkSets = (input: TotalsInput, sets: Sets, path: string, faults: Faults): void => {
  const names = sets.map(({ set }) => set);
  for (const [index, { set, bay, moving }] of sets.entries()) {
    const here = pathTo(path, index);
    if (names.indexOf(set) !== index) {
      faults.refuse('duplicateId', pathTo(here, 'set'), {
        found: `${describe(set)}, which is in this state before`,
        accepted: 'each set once in a state',
      });
    }
    if (bay !== undefined) {
      const place = { found: bay, known: input.bays, path: pathTo(here, 'bay') };
      refuseUnknown('badChoice', place, faults);
    }
    if (moving === true && input.movingShare === undefined) {
      faults.refuse('fieldMissing', 'movingShare', {
        found: `nothing, with set ${describe(set)} moving`,
        accepted: 'the share by which the loads of moving sets are raised, or 0',
      });
    }
  }
};

/** Wells of feet and inches may touch; a nanometre over is rounding. */
const ROUNDING = 1e-9;

const checkWells = (wells: TotalsInput['wells'], faults: Faults): void => {
  for (const [index, well] of wells.entries()) {
    const over = wells
      .slice(0, index)
      .find(({ x, width }) => Math.abs(well.x - x) < (well.width + width) / 2 - ROUNDING);
    if (over === undefined) continue;
    faults.refuse('wellsOverlap', pathTo(pathTo('wells', index), 'x'), {
      found: `${metresText(well.x)}, and ${describe(over.id)} is at ${metresText(over.x)}`,
      accepted: 'wells of which none lies over another',
    });
  }
};
