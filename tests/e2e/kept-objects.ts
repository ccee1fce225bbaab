/** What a page and its workers keep alive, read from snapshots of their heaps. */

import type { CDPSession } from 'playwright-core';

/** The browser compiles, and compiles anew, what runs often: that comes and goes as it likes, and nothing of ours holds it. */
const COMPILED = new Set(['code', 'hidden', 'object shape']);

interface HeapSnapshot {
  readonly snapshot: { readonly meta: { readonly node_fields: readonly string[]; readonly node_types: readonly [readonly string[]] } };
  readonly nodes: readonly number[];
}

export interface KeptObjects {
  /** Bytes of all objects, texts and buffers of the page's own thread. */
  page(): Promise<number>;
  /** The same of the worker that calculates. */
  worker(): Promise<number>;
}

/**
 * @param cdp - session of a page whose worker has started
 * @returns readings, each after all that can be collected is gone
 */
export async function keptObjects(cdp: CDPSession): Promise<KeptObjects> {
  const page = pageCalls(cdp);
  const worker = await workerCalls(cdp);
  return { page: () => bytesOf(page), worker: () => bytesOf(worker) };
}

interface Calls {
  send(method: 'HeapProfiler.collectGarbage' | 'HeapProfiler.takeHeapSnapshot'): Promise<void>;
  /** The pieces of the snapshot taken last. */
  chunks: string[];
}

function pageCalls(cdp: CDPSession): Calls {
  const calls: Calls = { send: async (method) => void (await cdp.send(method)), chunks: [] };
  cdp.on('HeapProfiler.addHeapSnapshotChunk', ({ chunk }) => calls.chunks.push(chunk));
  return calls;
}

/** A worker has no session of its own in playwright: its messages go in envelopes of the page's. */
async function workerCalls(cdp: CDPSession): Promise<Calls> {
  const attached = new Promise<string>((found) => {
    cdp.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => targetInfo.type === 'worker' && found(sessionId));
  });
  await cdp.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  const sessionId = await attached;
  const waiting = new Map<number, () => void>();
  let count = 0;
  const calls: Calls = {
    chunks: [],
    async send(method) {
      const id = ++count;
      const answered = new Promise<void>((done) => waiting.set(id, done));
      await cdp.send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) });
      await answered;
    },
  };
  cdp.on('Target.receivedMessageFromTarget', (envelope) => {
    if (envelope.sessionId !== sessionId) return;
    const message = JSON.parse(envelope.message) as { id?: number; method?: string; params?: { chunk: string } };
    if (message.method === 'HeapProfiler.addHeapSnapshotChunk') calls.chunks.push(message.params!.chunk);
    if (message.id !== undefined) waiting.get(message.id)?.();
  });
  return calls;
}

async function bytesOf(calls: Calls): Promise<number> {
  // What ends with this collection sets free what ends with that of the snapshot.
  await calls.send('HeapProfiler.collectGarbage');
  calls.chunks.length = 0;
  await calls.send('HeapProfiler.takeHeapSnapshot');
  const { snapshot, nodes } = JSON.parse(calls.chunks.join('')) as HeapSnapshot;
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  let bytes = 0;
  for (let at = 0; at < nodes.length; at += fields.length) {
    if (!COMPILED.has(types[0][nodes[at + type]!]!)) bytes += nodes[at + size]!;
  }
  return bytes;
}
