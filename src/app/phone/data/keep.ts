import { effect } from '@preact/signals';
import { installed } from '#app/platform/install.ts';
import { askToKeep } from '#app/platform/persist.ts';
import { openBuilds } from '#app/state/journals.ts';
import { theStore } from '#app/state/shop.ts';

const askedKey = 'askedToKeep';

async function askOnce(): Promise<void> {
  const store = theStore();
  // On the home screen a browser may say yes to what it refused a tab.
  const from = installed ? 'homeScreen' : 'tab';
  if ((await store.phoneValue(askedKey)) === from) return;
  await store.setPhoneValue(askedKey, from);
  await askToKeep();
}

/** Asks the browser to keep what is stored, once there is a build worth keeping. */
export function askOnceThereIsABuild(): void {
  const stop = effect(() => {
    if (openBuilds.value.length === 0) return;
    // Not kept is shown on the Data screen; it must not stop a build from being started.
    askOnce().catch(() => {});
    queueMicrotask(() => stop());
  });
}
