/** As many random battens as are asked for, each held to what must hold of any answer. */
import { solveBatten } from '#beam';
import { drawFrom } from '../draw.ts';
import { judgeBatten } from './judge-batten.ts';
import { randomStructure } from './random-battens.ts';

export type Trials = {
  readonly answered: number;
  readonly withSlack: number;
  readonly unstable: number;
  /** Each with the number of its batten. */
  readonly faults: readonly string[];
};

export const trials = (count: number, seed: number): Trials => {
  const draw = drawFrom(seed);
  let [answered, withSlack, unstable] = [0, 0, 0];
  const faults: string[] = [];
  for (let index = 0; index < count; index++) {
    const the = randomStructure(draw);
    const found = answerOrFault(() => solveBatten(the));
    if (typeof found === 'string') {
      faults.push(`batten ${index}: ${found}`);
      continue;
    }
    if ('unstable' in found) unstable += 1;
    else {
      answered += 1;
      if (found.slack.includes(true)) withSlack += 1;
    }
    for (const fault of judgeBatten(the, found)) faults.push(`batten ${index}: ${fault}`);
  }
  return { answered, withSlack, unstable, faults };
};

const answerOrFault = (solve: () => ReturnType<typeof solveBatten>) => {
  try {
    const answer = solve();
    return answer.ok ? answer.value : `refused: ${answer.error[0]?.code ?? 'without a code'}`;
  } catch (error) {
    return `thrown: ${String(error)}`;
  }
};
