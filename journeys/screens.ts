/** Every screen of the demo that is looked at as a whole, by its address. */

/** A question: what if the tower flat weighed more. */
export const HEAVIER = '[[["items",0,"takeoff","mass","value"],"700 lb"]]';

export const SCREENS = [
  '/hang-list',
  '/set/11',
  '/set/M1',
  '/sheets/balance-card/11',
  '/house?at=trim%3Aplaying',
  '/house/plan',
  '/house/limits',
  '/house/enter',
  '/house/enter/bricks',
  '/house/enter/sets?field=lineSets.11.arbor.panAtLow',
  '/house/found',
  '/house/found/11',
  '/which-set?piece=9',
  `/set/11/what-if?if=${encodeURIComponent(HEAVIER)}`,
  '/set/11/beside?other=36',
  '/another-house?to=skelderwick',
  '/self-check',
  '/notes',
  '/people',
  '/people/owner',
  '/this-server',
  '/documents/bring-in',
  '/documents/take-out?at=trim%3Aplaying',
  '/documents',
  '/documents/state%3Akestlemere',
];
