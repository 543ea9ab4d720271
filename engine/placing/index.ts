export { freeSets } from './free-sets.ts';
export { pastBatten } from './on-batten.ts';
export { type Places, pieceOf, placesFor } from './place.ts';
export { codesOnAll, lookKey, type Ranked, rank, type Standing } from './rank.ts';
export { isOverlap } from './space.ts';
export type {
  Against,
  BayFacts,
  BrickFacts,
  Candidate,
  Gap,
  LookAt,
  NotKnown,
  Piece,
  PlacingAsked,
  Subject,
  Withheld,
} from './types.ts';
export { type CandidateWork, type WorkNeeds, workOn } from './work.ts';
