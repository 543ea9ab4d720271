import { describe, expect, it } from 'vitest';
import { known, unknownValue } from '#house';
import { FOOT, INCH, POUND_FORCE } from '#quantities';
import { openExample } from '../../examples/open-example.ts';
import { placesAcross, sideAndDistance } from './say-across.ts';
import { lineForce, steelForce } from './say-force.ts';
import { withGrounds } from './say-known.ts';
import { onePartIn, preciseLength, timesWords, turnStep, typedPowers } from './say-precise.ts';

const { house: us } = openExample('kestlemere');
const { house: uk } = openExample('skelderwick');

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

describe('places across the stage', () => {
  it('have a side and no sign', () => {
    expect(sideAndDistance(-4.5 * FOOT, us)).toBe('SR 4\'-6"');
    expect(sideAndDistance(4.5 * FOOT, us)).toBe('SL 4\'-6"');
    expect(sideAndDistance(0, uk)).toBe('centre line');
  });

  it('that mirror one another are said once', () => {
    expect(plain(placesAcross([-6, -2, 2, 6], uk))).toBe('2.000 m, 6.000 m each side');
    expect(plain(placesAcross([-6, 0, 6], uk))).toBe('centre line, 6.000 m each side');
    expect(plain(placesAcross([0], uk))).toBe('centre line');
    expect(plain(placesAcross([-6, 2], uk))).toBe('SR 6.000 m, SL 2.000 m');
    expect(placesAcross([], uk)).toBe('none');
  });
});

describe('forces on steel', () => {
  it('go up as loads and down as limits, in one unit whatever their size', () => {
    expect(plain(steelForce(1001, uk))).toBe('1.01 kN');
    expect(plain(steelForce(1009, uk, 'down'))).toBe('1.00 kN');
    expect(plain(steelForce(40, uk))).toBe('0.04 kN');
    expect(plain(steelForce(100.2 * POUND_FORCE, us))).toBe('101 lbf');
  });

  it('on a step stay on it', () => {
    // 0.29 kN in hundredths is 28.999999999999996.
    expect(plain(steelForce(290, uk))).toBe('0.29 kN');
    expect(plain(steelForce(290, uk, 'down'))).toBe('0.29 kN');
  });

  it('of one line have tenths, and stay in newtons', () => {
    expect(plain(lineForce(1526.34, uk))).toBe('1526.3 N');
    expect(plain(lineForce(0, uk))).toBe('0.0 N');
    expect(plain(lineForce(327.26 * POUND_FORCE, us))).toBe('327.3 lbf');
  });
});

describe('figures for an engineer', () => {
  it('have decimals where a tape has none', () => {
    expect(plain(preciseLength(-0.094 * INCH, us))).toBe('0.094 in');
    expect(plain(preciseLength(0.002375, uk))).toBe('2.38 mm');
    expect(turnStep(us).lengthM).toBeCloseTo(0.003175, 12);
  });

  it('never make a factor larger or a sag smaller', () => {
    expect(timesWords(7.99, us)).toBe('7.9');
    expect(timesWords(7.6, us)).toBe('7.6');
    expect(onePartIn(1 / 239.6, us)).toBe('1/239');
    expect(onePartIn(1 / 240, us)).toBe('1/240');
    expect(onePartIn(0, us)).toBe('none');
  });

  it('type the powers that the face of the sheets has not', () => {
    expect(typedPowers('0.310 in\u2074, 0.326 in\u00B3')).toBe('0.310 in^4, 0.326 in^3');
  });
});

describe('grounds of a value', () => {
  const say = (value: number): string => `${value} lbf`;

  it('stand behind it, and a value that nobody knows says why', () => {
    expect(withGrounds(known(5, { basis: 'houseRule', source: 'plan' }), us, say)).toBe(
      '5 lbf (house rule: plan)',
    );
    expect(withGrounds(known(5, { basis: 'measured', source: 'measured on site' }), us, say)).toBe(
      '5 lbf (measured on site)',
    );
    expect(withGrounds(unknownValue('not surveyed'), us, say)).toBe('not known (not surveyed)');
    expect(withGrounds(unknownValue(), us, say)).toBe('not known');
  });
});
