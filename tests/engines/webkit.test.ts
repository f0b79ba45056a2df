import { tryJobIn } from './try-engine.ts';
import { webkit } from './webkit.ts';

tryJobIn(webkit);
