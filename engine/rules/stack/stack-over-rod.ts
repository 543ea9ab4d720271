import { measure } from '#findings';
import { byKnown } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenPlanned } from '../rule.ts';
import { stackWorking } from './stack-working.ts';

/** STK-001: the planned stack, pipe weight and spreader plates counted in, fits on the rods. */
export const stackOverRod = whenPlanned(({ plan, set: { lineSet } }) => {
  if (lineSet.arbor === null) return [];
  const { stack } = plan;
  return byKnown(lineSet.arbor.usableRod, 'usable rod', 'height of the stack', (rodM, source) =>
    isAbove(stack.height, rodM)
      ? [
          raise('STK-001', {
            at: { set: lineSet.id },
            measured: measure(stack.height, 'length'),
            limit: measure(rodM, 'length'),
            limitSource: source,
            facts: { plates: measure(stack.plates, 'count') },
            working: stackWorking(stack, { value: measure(rodM, 'length'), source }),
          }),
        ]
      : [],
  );
});
