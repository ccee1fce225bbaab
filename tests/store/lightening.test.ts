/** One search at a time: told how far it is, cancelled by ending its worker, replaced by the next, and a worker that dies is told. */

import { expect, it, vi } from 'vitest';
import type { LightenAnswer, LightenProgress } from '../../src/model/lighten.ts';
import type { LightenAsk } from '../../src/model/lightener.ts';
import { createLightenings, type Lightening } from '../../src/store/lightening.ts';

const ANSWER: LightenAnswer = {
  over: [],
  zones: [],
  passedOver: [],
  variants: [],
  obstacles: [],
  unsolved: [],
  leftOut: [],
  withoutPrice: [],
};
const ROUND: LightenProgress = { aim: 'weight', round: 1, baysLeft: 3 };

/** Searches whose workers answer, tell and die when the test says. */
function setUp() {
  const workers: { ask?: LightenAsk; answer(): void; tell(progress: LightenProgress): void; die(): void; stop: () => void }[] = [];
  const told: (Lightening | null)[] = [];
  const start = () => {
    let die = () => {};
    const crash = new Promise<never>((_, reject) => {
      die = () => reject(new Error('out of memory'));
    });
    const worker: (typeof workers)[number] = { answer: () => {}, tell: () => {}, die, stop: vi.fn() };
    workers.push(worker);
    const lighten = (ask: LightenAsk, onProgress: (progress: LightenProgress) => void) =>
      new Promise<LightenAnswer>((resolve) => {
        Object.assign(worker, { ask, answer: () => resolve(ANSWER), tell: onProgress });
      });
    return { lightener: { lighten }, crash, stop: worker.stop };
  };
  const searches = createLightenings(
    start,
    async () => ({ text: '{}', language: 'de' }),
    (lightening) => told.push(lightening),
  );
  return { ...searches, workers, told };
}

it('gives the answer, tells how far it is, and ends its worker', async () => {
  const { lighten, workers, told } = setUp();
  const answer = lighten({ aims: ['weight'] });
  await vi.waitFor(() => expect(workers[0].ask).toEqual({ text: '{}', language: 'de', options: { aims: ['weight'] } }));
  workers[0].tell(ROUND);
  workers[0].answer();
  expect(await answer).toBe(ANSWER);
  expect(told).toEqual(['started', ROUND, null]);
  expect(workers[0].stop).toHaveBeenCalledOnce();
});

it('cancelled, answers null at once and is not heard of again', async () => {
  const { lighten, cancelLighten, workers, told } = setUp();
  const answer = lighten({});
  await vi.waitFor(() => expect(workers[0].ask).toBeDefined());
  cancelLighten();
  expect(await answer).toBeNull();
  workers[0].tell(ROUND);
  expect(told).toEqual(['started', null]);
  expect(workers[0].stop).toHaveBeenCalledOnce();
  cancelLighten();
  expect(told).toHaveLength(2);
});

it('asked again, drops the search before and tells of the new one alone', async () => {
  const { lighten, workers, told } = setUp();
  const first = lighten({});
  await vi.waitFor(() => expect(workers[0].ask).toBeDefined());
  const second = lighten({});
  expect(await first).toBeNull();
  await vi.waitFor(() => expect(workers[1].ask).toBeDefined());
  workers[0].tell(ROUND);
  workers[1].answer();
  expect(await second).toBe(ANSWER);
  expect(told).toEqual(['started', 'started', null]);
});

it('a worker that dies is told, and leaves nothing working', async () => {
  const { lighten, workers, told } = setUp();
  const answer = lighten({});
  workers[0].die();
  await expect(answer).rejects.toThrow('out of memory');
  expect(told).toEqual(['started', null]);
});
