/** Whose work a step is, and who must be the second, in the witness's and the crew's own words. */
import { unreachable } from '#outcome';
import type { Step } from '#state';

export const postOf = (step: Step): string => {
  switch (step.act) {
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'hangOnSteel':
    case 'takeOffSteel':
      return 'deck';
    case 'add':
    case 'remove':
      return `gallery:${step.gallery}`;
    case 'fly':
    case 'ease':
      return 'rail';
    case 'rig':
    case 'unrig': {
      const { kind } = step.restraint;
      return kind === 'bullLine' || kind === 'winch' ? 'bullLine' : 'deck';
    }
    case 'close':
    case 'reopen':
      return step.zone.zone === 'run' ? 'marshal:run' : `marshal:drop:${step.zone.gallery}`;
    default:
      return unreachable(step);
  }
};
