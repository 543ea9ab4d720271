/**
 * A call on the demo for the bench of live data: leave is asked for the first brick of a visit,
 * with the rules in the path, and given back each time, so that it can be asked again.
 */
const SET = 'set:kestlemere/4';
const GALLERY = 'gallery:upper';
const MARSHAL = 'marshal:drop:upper';
const HOUSE = { house: 'kestlemere', show: 'vell', state: 'kestlemere' } as const;

/** What is sent for each tap, and what is put right after it. */
export type Work = {
  readonly body: (commandId: string) => Promise<object>;
  readonly after: () => Promise<void>;
};

const asked = async (address: string, path: string, payload?: object) => {
  const how =
    payload === undefined
      ? {}
      : {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(payload),
        };
  const response = await fetch(address + path, how);
  const answer = await response.json();
  if (!response.ok) throw new Error(`${path}: ${JSON.stringify(answer)}`);
  return answer;
};

export const leaveWork = async (address: string): Promise<Work> => {
  const head = { device: 'head', name: 'Head' };
  const { call } = await asked(address, '/api/call', { ...HOUSE, ...head });
  let commands = 0;
  const seenOn = async (target: string): Promise<number> =>
    (await asked(address, `/api/said?target=${encodeURIComponent(target)}`)).seen;
  const commandOf = (commandId: string, device: string, said: object) => ({
    ...{ commandId, device, target: SET, seen: null, clientMs: Date.now(), ...said },
  });
  const give = (device: string, said: object) => {
    commands += 1;
    return asked(address, '/api/commands', commandOf(`bench-call-${commands}`, device, said));
  };
  const payload = (more: object) => ({ call: call.id, ...more });
  const join = async (post: string, device: string): Promise<void> => {
    const { code } = await asked(address, '/api/call/codes', { post, answersFor: false });
    await asked(address, '/api/call/join', { code, device, name: device });
  };
  await join(GALLERY, 'gallery');
  await join(MARSHAL, 'marshal');
  const close = { act: 'close', zone: { zone: 'drop', gallery: 'upper' } };
  const ask = { post: MARSHAL, step: close, paper: null, override: null };
  const closing = await give('marshal', {
    ...{ kind: 'leave asked', seen: await seenOn(SET), payload: payload(ask) },
  });
  const done = { as: 'done', plates: null, height: null, words: '' };
  await give('marshal', {
    kind: 'step reported',
    // The leave is in the same batch, right after what asked for it.
    payload: payload({ post: MARSHAL, leave: closing.seqs[0] + 1, ...done }),
  });
  const clear = payload({ post: 'headFly', isClear: true });
  await give('head', { kind: 'post said', target: 'house', payload: clear });

  const step = { act: 'add', kind: 'F', count: 1, gallery: 'upper' };
  const brick = payload({ post: GALLERY, step, paper: 'the deck, by word', override: null });
  return {
    body: async (commandId) => {
      const seen = await seenOn(SET);
      return commandOf(commandId, 'gallery', { kind: 'leave asked', seen, payload: brick });
    },
    after: async () => {
      const given = await seenOn(SET);
      await give('gallery', {
        kind: 'leave returned',
        payload: payload({ asked: given, words: '' }),
      });
    },
  };
};
