// First, so that the database opens while the rest of this script is still being run.
import './state/chosen-shop.ts';
import { render } from 'preact';
import { everBuilt } from './laying-up/bench/ever-built.ts';
import { listenForMainKey } from './parts/main-key.ts';
import { askOnceThereIsABuild } from './phone/data/keep.ts';
import { loadLastMade } from './planning/making/last-made.ts';
import { firstPaint } from './platform/first-paint.ts';
import { idle } from './platform/idle.ts';
import { keepInstallOffer } from './platform/install.ts';
import { startUpdates } from './platform/update.ts';
import { App, loadAllScreens } from './shell/app.tsx';
import { fetchLateParts } from './shell/late.ts';
import { demoChosen } from './state/chosen-shop.ts';
import { loadDocuments, shelfIsThere } from './state/documents.ts';
import { benchSince, takeRead } from './state/journals.ts';
import { startTicking } from './state/now.ts';
import { followOthers } from './state/others.ts';
import { followTheme, settingsKey, takeSettings } from './state/settings.ts';
import { openShop } from './state/shop.ts';
import { putStarterShelf } from './state/starter.ts';
import './styles/base.css';
import './styles/forced-colors.css';
import type { Store } from '#storage/store.ts';

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
  let tellDrawn = () => {};
  const drawn = new Promise<void>((resolve) => {
    tellDrawn = resolve;
  });
  const opened = await openShop({ benchSince: benchSince(), phoneKey: settingsKey }, drawn);
  if (opened) {
    takeSettings(opened.first.phoneValue);
    takeRead(opened.first.journals);
    everBuilt.value = opened.first.everBuilt;
  }
  followTheme();
  startTicking();
  listenForMainKey();
  render(<App />, root);
  firstPaint().then(tellDrawn);
  await drawn;
  if (opened) {
    fetchLateParts();
    await fetchTheRest(opened.store);
  }
  idle().then(loadAllScreens);
  idle().then(startUpdates);
}

start();
