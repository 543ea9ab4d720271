/**
 * The crew of a call for its journey: people who have signed in, each on a device of theirs, and
 * what they do at their posts, by roles and names as a screen reader finds them.
 */
import type { Browser, Page } from 'playwright-core';
import { expect } from 'vitest';
import { foldAll, isBrickStep, platesOf } from '#call';
import type { HouseEvent, Task } from '#events';
import { postOf } from '#rules';
import type { HouseNow, PostId, SetNow, Step } from '#state';
import { openBrowser, openPage, type Width } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

const PASSPHRASE = 'seven lanterns over the weir';
export const IN_SHOW = '?house=kestlemere&show=vell';
export const SET = '11';

type Person = 'head' | 'rail' | 'gallery' | 'deck';
type Hand = {
  readonly name: string;
  readonly task: Task;
  readonly posts: readonly (readonly [post: PostId, words: string])[];
  readonly width: Width;
};

export const HANDS: Readonly<Record<Person, Hand>> = {
  head: {
    ...{ name: 'Hal Quist', task: 'headFly', width: 1440 },
    posts: [['headFly', 'Head flyman']],
  },
  rail: { name: 'Bo Lind', task: 'rail', width: 1024, posts: [['rail', 'Rail']] },
  gallery: {
    ...{ name: 'Cyra Bell', task: 'loader', width: 390 },
    posts: [
      ['gallery:upper', 'Upper loading gallery'],
      ['gallery:mid', 'Mid loading gallery'],
    ],
  },
  deck: {
    ...{ name: 'Dan Holm', task: 'deck', width: 1024 },
    posts: [
      ['deck', 'Deck'],
      ['watcher', 'Watcher'],
      ['marshal:run', 'Marshal of the run'],
      ['marshal:drop:upper', 'Marshal under the Upper loading gallery'],
      ['marshal:drop:mid', 'Marshal under the Mid loading gallery'],
    ],
  },
};
export const PEOPLE = Object.keys(HANDS) as readonly Person[];

/** One house and its people, as long as a journey lasts. */
let running: { readonly server: HouseServer; readonly browser: Browser; readonly owner: Page };
const pages = new Map<Person, Page>();
/** What a page threw; it ends the journey. */
export const faults: string[] = [];

export const server = (): HouseServer => running.server;
export const owner = (): Page => running.owner;

export const pageOf = (person: Person): Page => {
  const page = pages.get(person);
  if (page === undefined) throw new Error(`${person} has come in`);
  return page;
};

export const openHouse = async (): Promise<void> => {
  const [started, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  const page = await openPage(browser, started.address, { selfCheck: 'never' });
  running = { server: started, browser, owner: page };
};

export const closeHouse = async (): Promise<void> => {
  await running.browser.close();
  await running.server.stop();
};

/** The first of the house, by the code that stands on its screen. */
export const makeOwner = async (): Promise<void> => {
  type Session = { readonly ownerCode: string };
  const { ownerCode } = await asked<Session>(owner(), 'GET', '/api/session');
  const ada = { code: ownerCode, name: 'Ada Frost', passphrase: PASSPHRASE };
  await asked(owner(), 'POST', '/api/people/owner', ada);
};

export const asked = async <T>(
  page: Page,
  method: string,
  path: string,
  data?: object,
): Promise<T> => {
  const more = data === undefined ? {} : { data };
  const answer = await page.request.fetch(path, { method, ...more });
  expect(answer.ok(), `${method} ${path}: ${await answer.text()}`).toBe(true);
  return (await answer.json()) as T;
};

/** The whole record, as any device may ask for it, folded as they fold it. */
export const houseNow = async (): Promise<HouseNow> => {
  const events: HouseEvent[] = [];
  for (;;) {
    const after = events.at(-1)?.seq ?? 0;
    const page = await asked<{ readonly events: readonly HouseEvent[] }>(
      pageOf('head'),
      'GET',
      `/api/events?after=${after}`,
    );
    if (page.events.length === 0) return foldAll(events);
    events.push(...page.events);
  }
};
export const setNow = async (): Promise<SetNow> => {
  const set = (await houseNow()).sets[SET];
  if (set === undefined) throw new Error('the call has set 11');
  return set;
};

const whoIs = (post: PostId): readonly [person: Person, words: string] => {
  for (const person of PEOPLE) {
    const found = HANDS[person].posts.find(([each]) => each === post);
    if (found !== undefined) return [person, found[1]];
  }
  throw new Error(`nobody is at ${post}`);
};

/** The page of the post, turned to it where its device holds several. */
export const at = async (post: PostId): Promise<Page> => {
  const [person, words] = whoIs(post);
  const page = pageOf(person);
  const heading = page.getByRole('heading', { level: 1, name: words, exact: true });
  if (page.url().includes('/live/post/') && (await heading.count()) === 0) {
    await page
      .getByRole('navigation', { name: 'Posts of this device' })
      .getByRole('link', { name: words })
      .click();
  } else if (!page.url().includes('/live/post/')) {
    await page.goto(`/live/post/${encodeURIComponent(post)}${IN_SHOW}`);
  }
  await heading.waitFor();
  return page;
};

export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).click();

/** A key held for the second that it takes. */
export const hold = async (page: Page, name: string | RegExp): Promise<void> => {
  const button = page.getByRole('button', { name });
  await expect.poll(() => button.isEnabled()).toBe(true);
  await button.focus();
  await page.keyboard.down('Enter');
  const ways = () => button.evaluateAll((all) => all.map((each) => each.dataset['hold']).join());
  await expect.poll(ways).toMatch(/^(given)?$/);
  await page.keyboard.up('Enter');
};

export const invite = async (person: Person): Promise<void> => {
  const { name, task, width } = HANDS[person];
  const invitation = { name, role: 'run' };
  const { token } = await asked<{ readonly token: string }>(
    owner(),
    'POST',
    '/api/people/invitations',
    invitation,
  );
  const page = await openPage(running.browser, server().address, { width, selfCheck: 'never' });
  page.on('pageerror', ({ message }) => faults.push(`${person}: ${message}`));
  const joined = await asked<{ readonly id: string }>(page, 'POST', '/api/invitation/join', {
    ...{ token, name, passphrase: PASSPHRASE },
  });
  const path = `/api/people/${joined.id}/competences`;
  await asked(owner(), 'POST', path, { task });
  pages.set(person, page);
};

/** As it was left last night: bare on its low stop, and bricks enough on both galleries. */
export const leaveBare = async (): Promise<void> => {
  const id = '/api/documents/state:kestlemere';
  type State = { revision: number; document: Record<string, Record<string, object>> };
  const { revision, document } = await asked<State>(owner(), 'GET', id);
  const bare = { height: '3 ft', stack: [{ kind: 'O', count: 3, tag: 'pipe' }], items: {} };
  const stock = { F: 40, H: 12, O: 0 };
  const { sets = {}, galleries = {} } = document;
  const changed = {
    ...document,
    sets: { ...sets, [SET]: { ...sets[SET], ...bare } },
    galleries: {
      ...galleries,
      upper: { ...galleries['upper'], stock },
      mid: { ...galleries['mid'], stock },
    },
  };
  await asked(owner(), 'PUT', id, {
    ...{ kind: 'state', expectedRevision: revision, document: changed },
    ...{ savedBy: 'Ada Frost', why: 'left bare', remark: '' },
  });
};

const opened = async (page: Page, part: string): Promise<void> => {
  const box = page.locator('details').filter({ has: page.locator('summary', { hasText: part }) });
  if ((await box.getAttribute('open')) === null) await box.locator('summary').click();
};

type Counted = {
  readonly plates: readonly (readonly [kind: string, count: number])[];
  readonly flat: string;
};

/** The head flyman and a second look, count, and write it down; nothing is filled in for them. */
export const find = async ({ plates, flat }: Counted): Promise<void> => {
  const head = pageOf('head');
  await head.goto(`/live/set/${SET}${IN_SHOW}`);
  await opened(head, 'Find it');
  const form = head.getByRole('form', { name: /Found: how set 11 stands now/ });
  for (const [kind, count] of plates) {
    for (let plate = 0; plate < count; plate += 1) {
      await form.getByRole('button', { name: `One ${kind}` }).click();
    }
  }
  await form.getByLabel('Height of the batten now').fill('3 ft');
  await form.getByLabel('Rope lock').selectOption({ label: 'closed' });
  await form.getByLabel('Ring of the lock').selectOption({ label: 'on' });
  await form.getByLabel('Collar on the rods').selectOption({ label: 'secured' });
  await form.getByLabel('What carries it').selectOption({ label: 'its arbor, in use' });
  await form.getByLabel('Clock tower flat').selectOption({ label: flat });
  await form.getByRole('button', { name: 'Nothing else holds it' }).click();
  await form.getByLabel('How all this is known').selectOption({ label: 'counted' });
  await form.getByLabel('Second person who counted').fill(HANDS.deck.name);
  await form.getByRole('button', { name: 'Record how it was found' }).click();
  await expect.poll(async () => (await setNow()).knowledge.basis).toBe('counted');
};

export const PIPE = ['old cast, pipe weight', 3] as const;
export const BARE: Counted = { plates: [PIPE], flat: 'not here' };

export const tellPlan = async (): Promise<void> => {
  const head = pageOf('head');
  await head.goto(`/live/set/${SET}${IN_SHOW}`);
  await opened(head, 'Order of work');
  await press(head, 'Work out the load');
  await press(head, /Tell this order to all posts/);
  await expect.poll(async () => (await setNow()).plan?.done).toBe(0);
};

/** Who may stand under the bricks of a gallery says that they are out, from their own post. */
export const allClear = async (): Promise<void> => {
  for (const post of ['rail', 'deck', 'watcher', 'gallery:mid', 'gallery:upper']) {
    if ((await houseNow()).posts[post]?.isClear === true) continue;
    const page = await at(post);
    const word = /(clear of every zone|hands off, all clear)$/;
    if ((await page.getByRole('button', { name: word }).count()) === 0) {
      await press(page, 'Something else');
      await hold(page, word);
      await page.getByRole('button', { name: 'Back', exact: true }).click();
    } else await hold(page, word);
    await expect.poll(async () => (await houseNow()).posts[post]?.isClear).toBe(true);
  }
};

const countTyped = async (page: Page, count: number): Promise<void> => {
  const pad = page.getByRole('group', { name: /Count every plate/ });
  for (const figure of String(count)) {
    await pad.getByRole('button', { name: figure, exact: true }).click();
  }
};

/** What is asked waits for a second person, who says it from a device of theirs. */
export const second = async (count: number | null = null): Promise<void> => {
  const { asked: wish, standing, changed } = await setNow();
  if (wish === null) return;
  const page = await at(wish.secondOf);
  await page.getByText('asks for your word').waitFor();
  const isMove = wish.step.act === 'fly' || wish.step.act === 'ease';
  if (isMove && changed) await countTyped(page, count ?? platesOf(standing?.stack ?? []));
  await hold(page, /I confirm$/);
  await expect.poll(async () => (await setNow()).asked).toBeNull();
};

export const ask = async (step: Step): Promise<Page> => {
  const page = await at(postOf(step));
  await page.getByRole('button', { name: /Ask leave/ }).waitFor();
  const isAgainst = page.getByText('No leave as it stands now:');
  if ((await isAgainst.count()) > 0) {
    // The tower is weighed to 2 %, which is more than the lock holds: two people and a reason.
    await isAgainst.locator('..').locator('..').getByText('CAL-024').waitFor();
    await press(page, 'Something else');
    await page.getByLabel(/Reason to do it all the same/).fill('weighed last season');
    await hold(page, /ask all the same$/);
  } else await press(page, 'Ask leave');
  const isTaken = async (): Promise<boolean> => {
    const { asked: wish, leave } = await setNow();
    return leave !== null || (wish !== null && wish.secondOf !== '');
  };
  await expect.poll(isTaken).toBe(true);
  return page;
};

export const onePlate = async (step: Step, so: number): Promise<void> => {
  const page = await at(postOf(step));
  await hold(page, new RegExp(`plate ${so} on$`));
  await expect.poll(async () => (await setNow()).leave?.plates).toBe(so);
};

export const report = async (step: Step): Promise<void> => {
  const page = await at(postOf(step));
  const done = (await setNow()).plan?.done ?? 0;
  await hold(page, isBrickStep(step) ? /count as told$/ : /done as told$/);
  await expect.poll(async () => (await setNow()).plan?.done).toBe(done + 1);
};

export const doStep = async (step: Step): Promise<void> => {
  if (isBrickStep(step)) await allClear();
  await ask(step);
  await second();
  await (await at(postOf(step))).getByText('Leave is given: do it now.').waitFor();
  const count = isBrickStep(step) ? step.count : 0;
  for (let so = 1; so <= count; so += 1) await onePlate(step, so);
  await report(step);
};

export const nextStep = async (): Promise<Step> => {
  const { plan } = await setNow();
  const step = plan?.steps[plan.done];
  if (step === undefined) throw new Error('the order has a next step');
  return step;
};

export const upTo = async (isLast: (step: Step) => boolean): Promise<Step> => {
  for (let limit = 0; limit < 40; limit += 1) {
    const step = await nextStep();
    if (isLast(step)) return step;
    await doStep(step);
  }
  throw new Error('the order has such a step');
};
