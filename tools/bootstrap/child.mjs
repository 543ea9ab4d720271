/**
 * Runs another program in our place: same terminal, same exit code, and signals passed on.
 *
 * Ctrl-C in a terminal reaches the whole group, the child included. So we only wait for the child
 * to end; to pass it on as well would hit a server twice while it closes its database.
 */
import { spawn } from 'node:child_process';
import { constants } from 'node:os';

const passOn = (child, signal) => () => {
  const sentByTerminal = signal === 'SIGINT' && process.stdin.isTTY;
  if (!sentByTerminal) child.kill(signal);
};

export const waitFor = (program, args, { env = process.env } = {}) =>
  new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: 'inherit', env });
    const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
    const hands = signals.map((signal) => [signal, passOn(child, signal)]);
    for (const [signal, hand] of hands) process.on(signal, hand);
    child.on('error', reject);
    child.on('close', (code, signal) => {
      for (const [name, hand] of hands) process.off(name, hand);
      resolve(code === null ? 128 + (constants.signals[signal] || 0) : code);
    });
  });
