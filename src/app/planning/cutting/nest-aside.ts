import type { Nest } from '#calc';
import type { NestAnswer, NestInput } from './nest-worker.ts';

/** Lays out beside the page, which stays alive meanwhile; `stop` gives up what is not wanted any more. */
export interface NestAside {
  nest: (input: NestInput) => Promise<Nest>;
  stop: () => void;
}

export function nestAside(): NestAside {
  const worker = new Worker(new URL('./nest-worker.ts', import.meta.url), { type: 'module' });
  const nest = (input: NestInput) =>
    new Promise<Nest>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<NestAnswer>) => {
        if ('nest' in data) resolve(data.nest);
        else reject(new RangeError(data.refused));
      };
      worker.onerror = () => reject(new Error('the layout could not be made'));
      worker.postMessage(input);
    });
  return { nest, stop: () => worker.terminate() };
}
