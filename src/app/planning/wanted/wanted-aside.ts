import type { WantedInput } from '#calc';
import type { Wanted, WantedAnswer } from './wanted-worker.ts';

/** Searches beside the page, which stays alive meanwhile; `stop` gives up what is not wanted any more. */
export interface WantedAside {
  search: (input: WantedInput) => Promise<Wanted>;
  stop: () => void;
}

export function wantedAside(): WantedAside {
  const worker = new Worker(new URL('./wanted-worker.ts', import.meta.url), { type: 'module' });
  const search = (input: WantedInput) =>
    new Promise<Wanted>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<WantedAnswer>) => {
        if ('wanted' in data) resolve(data.wanted);
        else reject(new RangeError(data.refused));
      };
      worker.onerror = () => reject(new Error('the plies could not be searched'));
      worker.postMessage(input);
    });
  return { search, stop: () => worker.terminate() };
}
