import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const { module } = await runnerImport(here('backup-text.ts'), { configFile: false, root: here('..') });
const text = module.demoBackup();
await writeFile(here('shop.txt'), text);
console.log(`demo/shop.txt: ${text.split('\n').length - 1} lines, ${Math.round(text.length / 1024)} KB`);
