import { describe, expect, it } from 'vitest';
import { updatesOf } from './updates.ts';

describe('how the screens are given out', () => {
  it('is from the build of this program, to be kept by devices, unless it is set', () => {
    expect(updatesOf({}, '/house')).toEqual({
      webRoot: '/house/build/web',
      oldestBuild: null,
      startsOffline: true,
    });
    const set = {
      COUNTERPOISE_SCREENS: '/elsewhere',
      COUNTERPOISE_OLDEST_BUILD: 'newest',
      COUNTERPOISE_STARTS_OFFLINE: 'no',
    };
    expect(updatesOf(set, '/house')).toEqual({
      webRoot: '/elsewhere',
      oldestBuild: 'newest',
      startsOffline: false,
    });
  });

  it('says what it does not understand, rather than keeping the worker on the devices', () => {
    expect(updatesOf({ COUNTERPOISE_STARTS_OFFLINE: 'off' }, '/house')).toContain('yes or no');
  });
});
