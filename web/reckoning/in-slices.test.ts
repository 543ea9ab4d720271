import { describe, expect, it } from 'vitest';
import { inSlices } from './in-slices.ts';

function* counting(to: number, each: (turn: number) => void): Generator<undefined, string> {
  for (let turn = 1; turn <= to; turn += 1) {
    each(turn);
    yield;
  }
  return 'done';
}

const busyFor = (milliseconds: number): void => {
  const until = performance.now() + milliseconds;
  while (performance.now() < until);
};

describe('work in slices', () => {
  it('goes to its end, and lets others in between', async () => {
    let others = 0;
    const other = setInterval(() => {
      others += 1;
    }, 0);
    const answer = await new Promise<string>((resolve) => {
      inSlices(
        counting(6, () => busyFor(9)),
        resolve,
      );
    });
    clearInterval(other);
    expect(answer).toBe('done');
    expect(others).toBeGreaterThan(0);
  });

  it('does no more once it is stopped', async () => {
    const turns: number[] = [];
    const answers: string[] = [];
    await new Promise<void>((resolve) => {
      const stop = inSlices(
        counting(5, (turn) => {
          turns.push(turn);
          if (turn !== 2) return;
          stop();
          setTimeout(resolve, 30);
        }),
        (answer) => answers.push(answer),
      );
    });
    expect(turns).toEqual([1, 2]);
    expect(answers).toEqual([]);
  });
});
