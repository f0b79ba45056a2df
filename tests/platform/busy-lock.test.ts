import { afterEach, expect, test } from 'vitest';
import { busyReasons, holdBusyLock, whenNoPageIsBusy } from '#app/platform/busy-lock.ts';

const releases: (() => void)[] = [];

function hold(reason: string): () => void {
  const release = holdBusyLock(reason);
  releases.push(release);
  return release;
}

const heldNow = async () => {
  const { held = [] } = await navigator.locks.query();
  return held.filter(({ name }) => name === 'tubewright-busy').length;
};

// The browser gives a released lock back a moment later.
afterEach(async () => {
  for (const release of releases.splice(0)) release();
  await expect.poll(heldNow).toBe(0);
});

/** Another page with a running clock: it holds the same lock, and this module knows nothing of it. */
async function otherPageIsBusy(): Promise<() => void> {
  let release = () => {};
  await new Promise<void>((held) => {
    navigator.locks.request('tubewright-busy', { mode: 'shared' }, () => {
      held();
      return new Promise<void>((resolve) => {
        release = resolve;
      });
    });
  });
  return release;
}

async function ranWhenNotBusy(): Promise<boolean> {
  let ran = false;
  const answer = await whenNoPageIsBusy(async () => {
    ran = true;
  });
  expect(answer).toBe(ran);
  return ran;
}

test('with nothing going on anywhere the work is done', async () => {
  await expect.poll(ranWhenNotBusy).toBe(true);
});

test('a page that has just become busy is not disturbed, even before the browser has granted the lock', async () => {
  hold('a clock is running');
  expect(await ranWhenNotBusy()).toBe(false);
});

test('a page that became free again is no longer in the way', async () => {
  hold('a clock is running')();
  await expect.poll(ranWhenNotBusy).toBe(true);
});

test('two reasons in one page both have to end', async () => {
  const clock = hold('a clock is running');
  const build = hold('a build is open');
  expect(busyReasons.value).toEqual(['a clock is running', 'a build is open']);
  clock();
  expect(busyReasons.value).toEqual(['a build is open']);
  expect(await ranWhenNotBusy()).toBe(false);
  build();
  expect(busyReasons.value).toEqual([]);
  await expect.poll(ranWhenNotBusy).toBe(true);
});

test('the same reason held twice ends twice, and a release called twice ends only its own', async () => {
  const first = hold('a clock is running');
  hold('a clock is running');
  first();
  first();
  expect(busyReasons.value).toEqual(['a clock is running']);
  expect(await ranWhenNotBusy()).toBe(false);
});

test('another page that is busy holds the work back until it is free', async () => {
  const release = await otherPageIsBusy();
  expect(await ranWhenNotBusy()).toBe(false);
  release();
  await expect.poll(ranWhenNotBusy).toBe(true);
});

test('this page and another may be busy at once', async () => {
  const releaseOther = await otherPageIsBusy();
  const release = hold('a build is open');
  await expect
    .poll(
      async () =>
        (await navigator.locks.query()).held?.filter(({ name }) => name === 'tubewright-busy').length,
    )
    .toBe(2);
  releaseOther();
  release();
});

test('work that fails leaves the way free for the next', async () => {
  await expect(whenNoPageIsBusy(() => Promise.reject(new Error('no worker')))).rejects.toThrow('no worker');
  await expect.poll(ranWhenNotBusy).toBe(true);
});
