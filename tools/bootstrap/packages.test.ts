import { describe, expect, it } from 'vitest';

/** Plain JavaScript without types: old Nodes must read it. */
const { alreadyInstalled } = (await import(new URL('./packages.mjs', import.meta.url).href)) as {
  readonly alreadyInstalled: (lock: string, installed: string) => boolean;
};

const lock = (packages: Readonly<Record<string, object>>): string => JSON.stringify({ packages });
const ZOD = { 'node_modules/zod': { version: '4.6.7' } };
const FOR_ANOTHER_MACHINE = { 'node_modules/x-win32': { version: '1.0.0', optional: true } };

describe('packages that are there already', () => {
  it('are those of the lock, in its versions', () => {
    expect(alreadyInstalled(lock({ '': {}, ...ZOD }), lock(ZOD))).toBe(true);
    expect(alreadyInstalled(lock(ZOD), lock({ 'node_modules/zod': { version: '4.6.6' } }))).toBe(
      false,
    );
    expect(alreadyInstalled(lock(ZOD), lock({}))).toBe(false);
  });

  it('need not be those of another machine', () => {
    expect(alreadyInstalled(lock({ ...ZOD, ...FOR_ANOTHER_MACHINE }), lock(ZOD))).toBe(true);
  });

  it('are none where nothing was installed', () => {
    expect(alreadyInstalled(lock(ZOD), '{}')).toBe(false);
  });
});
