import { render } from 'preact';
import { benchSubject } from '#shared/record/entry.ts';
import { askOnceThereIsABuild } from './data/keep.ts';
import { loadLastMade } from './making/last-made.ts';
import { listenForMainKey } from './parts/main-key.ts';
import { keepInstallOffer } from './platform/install.ts';
import { startUpdates } from './platform/update.ts';
import { App, loadAllScreens } from './shell/app.tsx';
import { fetchLateParts } from './shell/late.ts';
import { loadDocuments, shelfIsThere } from './state/documents.ts';
import { loadJournals } from './state/journals.ts';
import { startTicking } from './state/now.ts';
import { followOthers } from './state/others.ts';
import { followTheme, loadSettings } from './state/settings.ts';
import { demoChosen, openShop } from './state/shop.ts';
import { putStarterShelf } from './state/starter.ts';
import './styles/base.css';
import type { Store } from '#storage/store.ts';

const whenIdle = (job: () => unknown) =>
  'requestIdleCallback' in window ? requestIdleCallback(() => job()) : setTimeout(job, 200);

/** What the first screen can do without: the shelf, and what a new tube starts with. */
async function fetchTheRest(store: Store): Promise<void> {
  await Promise.all([loadDocuments(), loadLastMade()]);
  // The network went before the starters were on the phone: they come with it.
  await putStarterShelf().catch(() => addEventListener('online', () => putStarterShelf(), { once: true }));
  shelfIsThere.value = true;
  followOthers(store);
  if (!demoChosen()) askOnceThereIsABuild();
}

async function start(): Promise<void> {
  keepInstallOffer();
  const root = document.getElementById('app');
  if (!root) throw new Error('index.html has no #app');
  const store = await openShop();
  if (store) {
    const [open] = await Promise.all([store.openSubjects(), loadSettings()]);
    await loadJournals([benchSubject, ...open]);
  }
  followTheme();
  startTicking();
  listenForMainKey();
  render(<App />, root);
  if (store) fetchLateParts();
  if (store) await fetchTheRest(store);
  whenIdle(loadAllScreens);
  whenIdle(startUpdates);
}

start();
