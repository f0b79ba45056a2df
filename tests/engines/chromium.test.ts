import { chromium } from './chromium.ts';
import { tryJobIn } from './try-engine.ts';

tryJobIn(chromium);
