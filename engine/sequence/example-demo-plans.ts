/**
 * A record of what the planner found for sets of the demo, so that a change shows. It is no outside
 * check. Which plans `verify` accepts is asked in `examples/kestlemere/plan-judged.test.ts`.
 *
 * A step is followed by the imbalance after it and the larger hold each way, pounds, batten heavy
 * positive, and by the limit of the lock that is trusted there.
 */
import type { OrderOptions } from './types.ts';

type DemoPlan = {
  readonly job: string;
  readonly options: Partial<OrderOptions>;
  readonly plan: readonly string[];
};

export const DEMO_PLANS: readonly DemoPlan[] = [
  {
    job: 'set 3, load',
    options: {},
    plan: [
      'best in 64 states, exposed 1.0 J, no restraint',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'attach cloth flying: 56.1 | in lowStop 1400.0 out lock 25.0',
      'close run; close upper; add 4 F upper: -43.9 | in lowStop 1400.0 out lock 50.0, nominal',
      'fly 25.10: -12.7 | in lock 25.0 out lock 25.0, planning',
      'reopen upper; close mid; add 1 F mid: -37.7 | in lock 50.0 out lock 50.0, nominal',
      'fly 60.50: -14.3 | in lock 25.0 out lock 25.0, planning',
      'reopen mid; reopen run; 11 steps: -14.3 | in lock 25.0 out lock 25.0, planning',
    ],
  },
  {
    job: 'set 3, strike',
    options: {},
    plan: [
      'best in 35 states, exposed 1.0 J, no restraint',
      'start: -14.3 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 24.93: -37.9 | in lock 50.0 out lock 50.0, nominal',
      'close mid; remove 3 F mid: 37.1 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: 6.1 | in lowStop 1400.0 out lock 25.0',
      'reopen mid; close upper; remove 2 F upper: 56.1 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release cloth: 48.6 | in lowStop 1400.0 out lock 25.0',
      '11 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 7, strike',
    options: {},
    plan: [
      'best in 65 states, exposed 1.0 J, no restraint',
      'start: -18.2 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 5.11: -49.9 | in lock 50.0 out lock 50.0, nominal',
      'close upper; remove 1 H upper: -37.4 | in lock 50.0 out lock 50.0, nominal',
      'remove 3 F upper: 37.6 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: 22.2 | in lowStop 1400.0 out lock 25.0',
      'remove 2 F upper: 72.2 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release border: 48.6 | in lowStop 1400.0 out lock 25.0',
      '10 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 8, load',
    options: {
      doubtShare: 1,
    },
    plan: [
      'best in 50 states, exposed 1.0 J, no restraint',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'attach legs flying: 57.7 | in lowStop 1400.0 out lock 25.0',
      'close run; close upper; add 3 F upper: -17.3 | in lowStop 1400.0 out lock 50.0, nominal',
      'fly 24.44: 25.1 | in lock 50.0 out lock 50.0, nominal',
      'reopen upper; close mid; add 2 F mid: -24.9 | in lock 50.0 out lock 50.0, nominal',
      'fly 30.25: -13.4..-3.4 | in lock 25.0 out lock 25.0, planning',
      'reopen mid; reopen run; 11 steps: -13.4..-3.4 | in lock 25.0 out lock 25.0, planning',
    ],
  },
  {
    job: 'set 8, load',
    options: {
      work: [
        {
          fromM: 1.1,
          toM: 1.3,
        },
      ],
    },
    plan: [
      'best in 85 states, exposed 3152.6 J, no restraint',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'close upper; add 2 F upper: -1.4 | in lowStop 1400.0 out lock 25.0, planning',
      'close run; fly 4.27: -3.1 | in lock 25.0 out lock 25.0, planning',
      'reopen upper; reopen run; attach legs flying: 10.2 | in lock 25.0 out lock 25.0, planning',
      'close upper; add 1 F upper: -14.8 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 24.38: 25.0 | in lock 25.0 out lock 25.0, planning',
      'reopen upper; close mid; add 2 F mid: -25.0 | in lock 25.0 out lock 25.0, planning',
      'fly 30.25: -13.4..-3.4 | in lock 25.0 out lock 25.0, planning',
      'reopen mid; reopen run; 17 steps: -13.4..-3.4 | in lock 25.0 out lock 25.0, planning',
    ],
  },
  {
    job: 'set 16, load',
    options: {},
    plan: [
      'best in 74 states, exposed 1.0 J, no restraint',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'attach legs flying: 57.7 | in lowStop 1400.0 out lock 25.0',
      'close upper; add 3 F upper: -17.3 | in lowStop 1400.0 out lock 25.0, planning',
      'close run; fly 23.46: 18.7 | in lock 25.0 out lock 25.0, planning',
      'reopen upper; close mid; add 1 F mid: -6.3 | in lock 25.0 out lock 25.0, planning',
      'add 1 H mid: -18.8 | in lock 25.0 out lock 25.0, planning',
      'fly 30.25: -6.8..3.2 | in lock 25.0 out lock 25.0',
      'reopen mid; reopen run; 12 steps: -6.8..3.2 | in lock 25.0 out lock 25.0',
    ],
  },
  {
    job: 'set 22, load',
    options: {
      doubtShare: 1,
    },
    plan: [
      'best in 75 states, exposed 1.0 J, 55.0 lb against out, 25.26 to 26.79 ft, less not in 12',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'attach cloth flying: 61.9 | in lowStop 1400.0 out lock 25.0',
      'close run; close upper; add 4 F upper: -38.1 | in lowStop 1400.0 out lock 50.0, nominal',
      'fly 25.26: 34.9 | in lock 50.0 out lock 50.0, nominal',
      'rig bullLine: 34.9 | in lock 50.0 out bullLine 55.0, nominal',
      'reopen upper; close mid; add 3 F mid: -40.1 | in lock 25.0 out bullLine 55.0',
      'fly 60.50: -23.9 | in lock 50.0 out lock 50.0, nominal',
      'unrig bullLine: -23.9 | in lock 50.0 out lock 50.0, nominal',
      'reopen mid; 12 steps: -23.9 | in lock 50.0 out lock 50.0, nominal',
    ],
  },
  {
    job: 'set 22, strike',
    options: {
      lock: 'nominal',
    },
    plan: [
      'best in 37 states, exposed nobody, no restraint',
      'start: -23.9 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 22.24: -50.0 | in lock 50.0 out lock 50.0, nominal',
      'close mid; remove 4 F mid: 50.0 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: -13.1 | in lowStop 1400.0 out lock 25.0, planning',
      'reopen mid; close upper; remove 3 F upper: 61.9 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release cloth: 48.6 | in lowStop 1400.0 out lock 25.0',
      '11 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 34, load',
    options: {
      doubtShare: 1,
      work: [
        {
          fromM: 1.5,
          toM: 2,
        },
      ],
    },
    plan: [
      'best in 158 states, exposed 3620.9 J, 95.0 lb against in, 5.09 to 5.09 ft, less not in 11',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'close upper; add 2 F upper: -1.4 | in lowStop 1400.0 out lock 25.0, planning',
      'close run; fly 5.09: -4.6 | in lock 25.0 out lock 25.0, planning',
      'rig stands: -4.6 | in stands 95.0 out lock 25.0, planning',
      'reopen upper; reopen run; attach track flying: 57.4 | in stands 95.0 out lock 25.0',
      'close upper; add 1 F upper: 32.4 | in stands 95.0 out lock 25.0',
      'reopen upper; attach silk flying: 39.1 | in stands 95.0 out lock 25.0',
      'close run; unrig stands: 39.1 | in lock 50.0 out lock 50.0, nominal',
      'fly 57.00: -9.5 | in lock 25.0 out lock 25.0, planning',
      'reopen run; 16 steps: -9.5 | in lock 25.0 out lock 25.0, planning',
    ],
  },
  {
    job: 'set 34, strike',
    options: {
      heightStepM: 0.3048,
      neatM: 0.5,
    },
    plan: [
      'best in 28 states, exposed 1.0 J, no restraint',
      'start: -9.5 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 3.00: 39.3 | in lowStop 1400.0 out lock 25.0',
      'close upper; remove 3 F upper: 114.3 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release track: 52.3 | in lowStop 1400.0 out lock 25.0',
      'release silk: 48.6 | in lowStop 1400.0 out lock 25.0',
      '8 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 23, strike',
    options: {},
    plan: [
      'best in 151 states, exposed 1.0 J, no restraint',
      'start: -34.3 | in lock 50.0 out lock 50.0, nominal',
      'close run; fly 5.00: -192.0..38.0 | in lock 25.0 out lock 25.0',
      'close upper; remove 1 H upper: -179.5..50.5 | in lock 25.0 out lock 25.0',
      'remove 9 F upper: 45.5..275.5 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: 48.6..278.6 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release header: 48.6 | in lowStop 1400.0 out lock 25.0',
      '9 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 21, strike',
    options: {},
    plan: [
      'best in 76 states, exposed 1.0 J, 85.0 lb against out, 3.11 to 15.00 ft, less not in 2',
      'start: -25.8 | in lock 50.0 out lock 50.0, nominal',
      'close run; fly 25.26: 15.1 | in lock 25.0 out lock 25.0, planning',
      'close mid; remove 1 H mid: 27.6 | in lock 50.0 out lock 50.0, nominal',
      'rig bullLine: 27.6 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: -49.9 | in lowStop 1400.0 out bullLine 85.0',
      'unrig bullLine: -49.9 | in lowStop 1400.0 out lock 50.0, nominal',
      'reopen mid; close upper; remove 4 F upper: 50.1 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release lamps: 50.1 | in lowStop 1400.0 out lock 25.0',
      'release loom: 48.6 | in lowStop 1400.0 out lock 25.0',
      '14 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 3, strike',
    options: {
      doubtShare: 1,
    },
    plan: [
      'best in 71 states, exposed 1.0 J, 80.0 lb against out, 20.67 to 30.25 ft, less not in 1',
      'start: -14.3 | in lock 50.0 out lock 50.0, nominal',
      'close run; rig bullLine: -14.3 | in lock 50.0 out lock 50.0, nominal',
      'fly 20.67: -43.9 | in lock 25.0 out bullLine 80.0',
      'close mid; remove 3 F mid: 31.1 | in lock 50.0 out bullLine 80.0, nominal',
      'unrig bullLine: 31.1 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: 6.1 | in lowStop 1400.0 out lock 25.0, planning',
      'reopen mid; close upper; remove 2 F upper: 56.1 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release cloth: 48.6 | in lowStop 1400.0 out lock 25.0',
      '13 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 30, strike',
    options: {
      doubtShare: 1,
    },
    plan: ['none in 8 states: HOLD', 'change tolerances, share 0.2246'],
  },
  {
    job: 'set 17, strike',
    options: {
      doubtShare: 1,
    },
    plan: ['none in 1 states: HOLD at 58.00 ft by 19.5 lb', 'change tolerances, share 0.3691'],
  },
  {
    job: 'set D3, strike',
    options: {
      doubtShare: 1,
    },
    plan: ['none in 16 states: HOLD', 'change tolerances, share 0.7764'],
  },
  {
    job: 'set 40, strike',
    options: {},
    plan: [
      'best in 89 states, exposed 1.0 J, no restraint',
      'start: -6.5 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 3.00: 17.7 | in lowStop 1400.0 out lock 25.0',
      'close upper; remove 1 H upper: 30.2 | in lowStop 1400.0 out lock 25.0',
      'remove 14 F upper: 380.2 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release units: 92.2 | in lowStop 1400.0 out lock 25.0',
      'release cable: 52.2 | in lowStop 1400.0 out lock 25.0',
      'release loom: 48.6 | in lowStop 1400.0 out lock 25.0',
      '10 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 21, strike',
    options: {
      restraint: 'none',
    },
    plan: [
      'none in 38 states: HOLD at 3.11 ft by 35.0 lb',
      'change restraint, resists out, rated 378.0988, from 0.9481, to 4.5720',
    ],
  },
  {
    job: 'set 27, load',
    options: {
      doubtShare: 1,
    },
    plan: ['none in 2 states: HOLD at 57.50 ft by 10.9 lb', 'change tolerances, share 0.2998'],
  },
  {
    job: 'set 23, load',
    options: {
      statesMost: 40,
    },
    plan: [
      'not known to be best in 116 states, exposed 1.0 J, no restraint',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'close run; fly 3.00: 48.6 | in lowStop 1400.0 out lock 25.0',
      'reopen run; attach header flying: 48.6..278.6 | in lowStop 1400.0 out lock 25.0',
      'close run; fly 3.00: 48.6..278.6 | in lowStop 1400.0 out lock 25.0',
      'close upper; add 1 H upper: 36.1..266.1 | in lowStop 1400.0 out lock 25.0',
      'fly 3.00: 36.1..266.1 | in lowStop 1400.0 out lock 25.0',
      'add 1 F upper: 11.1..241.1 | in lowStop 1400.0 out lock 25.0',
      'fly 3.00: 11.1..241.1 | in lowStop 1400.0 out lock 25.0',
      'add 1 F upper: -13.9..216.1 | in lowStop 1400.0 out lock 25.0',
      'fly 3.00: -13.9..216.1 | in lowStop 1400.0 out lock 25.0',
      'add 1 F upper: -38.9..191.1 | in lowStop 1400.0 out lock 25.0',
      'fly 5.00: -42.0..188.0 | in lock 25.0 out lock 25.0',
      'add 6 F upper: -192.0..38.0 | in lock 25.0 out lock 25.0',
      'fly 52.00: -34.3 | in lock 50.0 out lock 50.0, nominal',
      'reopen upper; 18 steps: -34.3 | in lock 50.0 out lock 50.0, nominal',
    ],
  },
  {
    job: 'set 15, strike',
    options: {
      doubtShare: 1,
    },
    plan: [
      'best in 121 states, exposed 1.0 J, 70.0 lb against out, 5.40 to 5.64 ft, less not in 5',
      'start: -24.2 | in lock 50.0 out lock 50.0, nominal',
      'close run; fly 24.93: -10.7 | in lock 50.0 out lock 50.0, nominal',
      'close mid; remove 1 H mid: 1.8 | in lock 25.0 out lock 25.0, planning',
      'rig bullLine: 1.8 | in lock 25.0 out lock 25.0, planning',
      'fly 5.40: -35.8 | in lock 25.0 out bullLine 70.0',
      'reopen mid; close upper; remove 1 F upper: -10.8 | in lock 25.0 out bullLine 70.0, planning',
      'unrig bullLine: -10.8 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: -27.7 | in lowStop 1400.0 out lock 50.0, nominal',
      'remove 4 F upper: 72.3 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release border: 48.6 | in lowStop 1400.0 out lock 25.0',
      '15 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
  {
    job: 'set 29, load',
    options: {
      statesMost: 10,
    },
    plan: [
      'not known to be best in 31 states, exposed 1.0 J, no restraint',
      'start: 48.6 | in lowStop 1400.0 out lock 25.0',
      'attach legs flying: 57.7 | in lowStop 1400.0 out lock 25.0',
      'close upper; add 1 H upper: 45.2 | in lowStop 1400.0 out lock 25.0',
      'add 1 F upper: 20.2 | in lowStop 1400.0 out lock 25.0',
      'close run; fly 3.00: 20.2 | in lowStop 1400.0 out lock 25.0',
      'add 1 F upper: -4.8 | in lowStop 1400.0 out lock 25.0, planning',
      'fly 19.90: 24.9 | in lock 25.0 out lock 25.0, planning',
      'reopen upper; close mid; add 1 F mid: -0.1 | in lock 25.0 out lock 25.0, planning',
      'fly 25.10: 9.1 | in lock 25.0 out lock 25.0, planning',
      'add 1 F mid: -15.9 | in lock 25.0 out lock 25.0, planning',
      'fly 30.25: -6.8..3.2 | in lock 25.0 out lock 25.0',
      'reopen mid; reopen run; 16 steps: -6.8..3.2 | in lock 25.0 out lock 25.0',
    ],
  },
  {
    job: 'set 9, strike',
    options: {
      spare: {
        H: 1,
      },
      restraint: 'in',
    },
    plan: [
      'best in 87 states, exposed 1.0 J, no restraint',
      'start: -14.8 | in lock 25.0 out lock 25.0, planning',
      'close run; fly 22.80: -44.2 | in lock 50.0 out lock 50.0, nominal',
      'close mid; remove 1 H mid: -31.7 | in lock 50.0 out lock 50.0, nominal',
      'remove 3 F mid: 43.3 | in lock 50.0 out lock 50.0, nominal',
      'fly 3.00: -14.7 | in lowStop 1400.0 out lock 25.0, planning',
      'reopen mid; close upper; remove 3 F upper: 60.3 | in lowStop 1400.0 out lock 25.0',
      'reopen upper; reopen run; release cloth: 48.6 | in lowStop 1400.0 out lock 25.0',
      '12 steps: 48.6 | in lowStop 1400.0 out lock 25.0',
    ],
  },
];
