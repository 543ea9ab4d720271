import type { FastifyInstance } from 'fastify';
import { blankHouse, blankShow, writeDocument } from '#documents';
import { BLANK_IDS } from '../database-of.ts';
import type { FirstDocument } from '../databases.ts';
import type { AppParts } from './app-parts.ts';
import { problem } from './problems.ts';

type Take = {
  readonly database: 'demo' | 'house';
  readonly name?: string;
  readonly units?: 'customary' | 'metric';
  readonly words?: 'US' | 'UK';
  readonly operatingSide?: 'stageRight' | 'stageLeft';
};

const TAKE_BODY = {
  type: 'object',
  required: ['database'],
  additionalProperties: false,
  properties: {
    database: { enum: ['demo', 'house'] },
    name: { type: 'string', minLength: 1, maxLength: 80 },
    units: { enum: ['customary', 'metric'] },
    words: { enum: ['US', 'UK'] },
    operatingSide: { enum: ['stageRight', 'stageLeft'] },
  },
} as const;

/** Which database is in hand, and the one step from the demo to a house of one's own and back. */
export const databaseRoutes = (app: FastifyInstance, { databases }: AppParts): void => {
  app.get('/api/database', async () => ({
    inHand: databases.inHand(),
    hasHouse: databases.hasHouse(),
    // A device keeps what it read of each house by itself.
    houseKey: databases.record().identity().houseKey,
  }));

  app.post<{ Body: Take }>(
    '/api/database',
    { schema: { body: TAKE_BODY } },
    async (request, reply) => {
      const { database, ...asked } = request.body;
      if (database === 'demo' || databases.hasHouse()) {
        databases.take(database, []);
      } else if (!isWhole(asked)) {
        const title = 'A new house needs a name, units, trade words and its operating side.';
        return problem(reply, 422, title);
      } else {
        databases.take(database, blankDocuments(asked));
      }
      return { inHand: databases.inHand(), hasHouse: databases.hasHouse() };
    },
  );
};

type NewHouse = Required<Omit<Take, 'database'>>;

const isWhole = (asked: Omit<Take, 'database'>): asked is NewHouse =>
  [asked.name, asked.units, asked.words, asked.operatingSide].every((field) => field !== undefined);

const blankDocuments = (wanted: NewHouse): readonly FirstDocument[] => {
  const house = blankHouse({ id: 'house', ...wanted });
  const show = blankShow({ id: 'first-show', name: 'First show', house: 'house' });
  return [
    { id: BLANK_IDS.house, kind: 'house', text: writeDocument(house) },
    { id: BLANK_IDS.show, kind: 'show', text: writeDocument(show) },
  ];
};
