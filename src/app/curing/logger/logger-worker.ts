import type { Logged } from '#app/curing/oven/merged.ts';
import type { Table } from './layout.ts';
import { loggedKey, loggedOf, loggedResults } from './logged-results.ts';
import { openFile, openKnown } from './open-file.ts';
import type { Answer, Ask, LoggedFile } from './protocol.ts';
import { tryFile } from './try-file.ts';

/** The file that was looked at last: every change in its preview reads it again. */
let table: Table = [];
const read = new Map<string, Logged[]>();
/** Oven loads are looked at one after the other. */
const keptFiles = 6;

function readOnce(file: LoggedFile): Logged[] {
  const key = loggedKey(file.entry);
  const logged = read.get(key) ?? loggedOf(file);
  read.delete(key);
  read.set(key, logged);
  for (const oldest of [...read.keys()].slice(0, -keptFiles)) read.delete(oldest);
  return logged;
}

function answer(ask: Ask): Extract<Answer, { gives: unknown }>['gives'] {
  if (ask.what === 'look') {
    const opened = openFile(new Uint8Array(ask.bytes), ask.known);
    table = ask.dialect ? openKnown(new Uint8Array(ask.bytes), ask.dialect) : opened.table;
    return opened.looked;
  }
  if (ask.what === 'try') return tryFile(table, ask);
  return loggedResults(ask.state, ask.tubes, ask.files.flatMap(readOnce));
}

/** Big arrays change hands: copied, they would hold up the page. */
function transferred(said: Answer): Transferable[] {
  if (!('gives' in said) || !('traces' in said.gives)) return [];
  return said.gives.traces.flatMap((t) => [t.at.buffer, t.temperature.buffer] as Transferable[]);
}

addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  const { id } = data;
  let said: Answer;
  try {
    said = { id, gives: answer(data) };
  } catch (error) {
    said = { id, failed: error instanceof Error ? error.message : String(error) };
  }
  postMessage(said, { transfer: transferred(said) });
});
