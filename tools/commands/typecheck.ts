/** `npm run typecheck`: the three zones. */
import { typecheck, ZONES } from '../running/typecheck.ts';

for (const zone of ZONES) {
  const faults = await typecheck(zone);
  process.stdout.write(faults === '' ? `${zone}: no faults\n` : `${zone}:\n${faults}\n`);
  if (faults !== '') process.exitCode = 1;
}
