import type { Answer, Ask, Asked, What } from './protocol.ts';

interface Waiting {
  resolve: (gives: never) => void;
  reject: (error: Error) => void;
}

let worker: Worker | undefined;
let count = 0;
const waiting = new Map<number, Waiting>();

function begin(): Worker {
  const made = new Worker(new URL('./logger-worker.ts', import.meta.url), { type: 'module' });
  made.onmessage = ({ data }: MessageEvent<Answer>) => {
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if ('gives' in data) asked?.resolve(data.gives as never);
    else asked?.reject(new Error(data.failed));
  };
  made.onerror = () => {
    for (const { reject } of waiting.values()) reject(new Error('the file could not be read'));
    waiting.clear();
    worker = undefined;
  };
  return made;
}

/** Files are read beside the page, which stays alive meanwhile. */
export function aside<W extends What>(what: W, asks: Asked[W]['asks']): Promise<Asked[W]['gives']> {
  worker ??= begin();
  const [beside, id] = [worker, ++count];
  return new Promise((resolve, reject) => {
    waiting.set(id, { resolve, reject });
    beside.postMessage({ id, what, ...asks } as unknown as Ask);
  });
}
