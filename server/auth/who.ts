/** Who asks. Nobody is somebody too: the one who may do next to nothing. */
import type { Role } from '#events';
import { type Duty, roleMay } from './roles.ts';

export type Person = {
  readonly kind: 'person';
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly session: string;
  readonly device: string;
  /** When they last gave their passphrase or PIN in this session. */
  readonly provedAtMs: number;
};

export type Program = {
  readonly kind: 'program';
  readonly id: string;
  readonly name: string;
  readonly role: Role;
};

export type Who =
  | { readonly kind: 'nobody' }
  /** Whoever sits at the machine itself, as long as it needs no ceremony. */
  | { readonly kind: 'thisMachine' }
  | Person
  | Program;

export const NOBODY: Who = { kind: 'nobody' };
export const THIS_MACHINE: Who = { kind: 'thisMachine' };

export const mayDo = (who: Who, duty: Duty): boolean => {
  if (who.kind === 'nobody') return false;
  return who.kind === 'thisMachine' || roleMay(who.role, duty);
};
