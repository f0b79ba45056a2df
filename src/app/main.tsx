import { render } from 'preact';
import { benchSubject } from '#shared/record/entry.ts';
import { startAlarms } from './clocks/alarms.ts';
import { askOnceThereIsABuild } from './data/keep.ts';
import { loadLastMade } from './making/last-made.ts';
import { listenForMainKey } from './parts/main-key.ts';
import { keepInstallOffer } from './platform/install.ts';
import { startUpdates } from './platform/update.ts';
import { App, loadAllScreens } from './shell/app.tsx';
import { loadDocuments } from './state/documents.ts';
import { loadJournals } from './state/journals.ts';
import { startTicking } from './state/now.ts';
import { followOthers } from './state/others.ts';
import { followTheme, loadSettings } from './state/settings.ts';
import { demoChosen, openShop } from './state/shop.ts';
import { putStarterShelf } from './state/starter.ts';
import './styles/base.css';

const whenIdle = (job: () => unknown) =>
  'requestIdleCallback' in window ? requestIdleCallback(() => job()) : setTimeout(job, 200);

async function start(): Promise<void> {
  keepInstallOffer();
  const root = document.getElementById('app');
  if (!root) throw new Error('index.html has no #app');
  const store = await openShop();
  if (store) {
    const [open] = await Promise.all([store.openSubjects(), loadSettings(), loadDocuments(), loadLastMade()]);
    await loadJournals([benchSubject, ...open]);
    await putStarterShelf();
    followOthers(store);
    if (!demoChosen()) askOnceThereIsABuild();
  }
  followTheme();
  startTicking();
  listenForMainKey();
  if (store) startAlarms();
  render(<App />, root);
  whenIdle(loadAllScreens);
  whenIdle(startUpdates);
}

start();
