import { firefox } from './firefox.ts';
import { tryJobIn } from './try-engine.ts';

tryJobIn(firefox);
