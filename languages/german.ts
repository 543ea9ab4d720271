/**
 * German. The words of the trade are from memory: a German practitioner must read this catalogue
 * before anybody works by it.
 */
import catalogue from './german.json' with { type: 'json' };
import { TOLD } from './told/index.ts';
import { tongueOf } from './tongue-of.ts';

export const german = tongueOf({ language: 'de', texts: catalogue, told: TOLD });
