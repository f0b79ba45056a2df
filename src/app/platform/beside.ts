/** What a worker sends back. What cannot be computed comes back as the sentence of the computation. */
export type Answer<Gives> = { gives: Gives } | { refused: string };

/** The worker's script could not be fetched: the app went without a network before all of it was kept. */
export class NotOnThePhone extends Error {}

/** Computes beside the page, which stays alive meanwhile; `stop` gives up what is not wanted any more. */
export interface Beside<Asks, Gives> {
  ask: (input: Asks) => Promise<Gives>;
  stop: () => void;
}

export function beside<Asks, Gives>(worker: Worker): Beside<Asks, Gives> {
  const ask = (input: Asks) =>
    new Promise<Gives>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<Answer<Gives>>) => {
        if ('gives' in data) resolve(data.gives);
        else reject(new RangeError(data.refused));
      };
      // A script that throws says a message; one that was never fetched has none.
      worker.onerror = ({ message }) => reject(message ? new Error(message) : new NotOnThePhone());
      worker.postMessage(input);
    });
  return { ask, stop: () => worker.terminate() };
}

/** The worker's own half. */
export function answerBeside<Asks, Gives>(compute: (input: Asks) => Gives): void {
  addEventListener('message', ({ data }: MessageEvent<Asks>) => {
    let answer: Answer<Gives>;
    try {
      answer = { gives: compute(data) };
    } catch (error) {
      answer = { refused: error instanceof Error ? error.message : String(error) };
    }
    postMessage(answer);
  });
}
