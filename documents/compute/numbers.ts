/** Numbers in SI that any theatre could have; the bounds are those of the documents. */
import { z } from 'zod';

const upTo = (max: number, about: string) => z.number().min(0).max(max).describe(about);
const above0 = (max: number, about: string) => z.number().gt(0).max(max).describe(about);

const MASS_MAX = 50_000;
const LENGTH_MAX = 200;

export const mass = (about: string) => above0(MASS_MAX, `${about}, kg`);
export const massOrNone = (about: string) => upTo(MASS_MAX, `${about}, kg`);
export const length = (about: string) => above0(LENGTH_MAX, `${about}, m`);
export const gap = (about: string) => upTo(LENGTH_MAX, `${about}, m`);
export const across = (about: string) => z.number().min(-100).max(100).describe(`${about}, m`);
export const massPerLength = (about: string) => upTo(200, `${about}, kg/m`);
export const hold = (about: string) => upTo(1e7, `${about}, N`);
export const force = (about: string) => above0(1e7, `${about}, N`);
export const stiffForce = (about: string) => above0(1e10, `${about}, N`);
export const spring = (about: string) => above0(1e10, `${about}, N/m`);
export const speed = (about: string) => upTo(50, `${about}, m/s`);
export const speedAboveNone = (about: string) => above0(50, `${about}, m/s`);
export const acceleration = (about: string) => upTo(100, `${about}, m/s²`);
export const pull = (about: string) => z.number().min(-1e5).max(1e5).describe(`${about}, N`);
export const eitherWay = (about: string) => z.number().min(-1e7).max(1e7).describe(`${about}, N`);
export const level = (about: string) =>
  z.number().min(-LENGTH_MAX).max(LENGTH_MAX).describe(`${about}, m`);
export const area = (about: string) => above0(100, `${about}, m²`);
export const density = (about: string) => above0(10, `${about}, kg/m³`);
export const dragCoefficient = above0(10, 'Drag coefficient');
export const share = (about: string) => upTo(1, `${about}, as a part of one`);
export const count = (min: 0 | 1, max: number, about: string) =>
  z.int().min(min).max(max).describe(about);
export const handLine = above0(4, 'Travel of the hand line for that of the batten');
export const purchase = z
  .literal([1, 2])
  .describe('1 single purchase, 2 double purchase: batten travel over arbor travel');
export const id = z.string().min(1).max(32).describe('Id of the brick kind');
