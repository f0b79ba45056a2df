import { type Nest, nestPieces } from '#calc';

export type NestInput = Parameters<typeof nestPieces>[0];
/** What cannot be laid out comes back as the sentence of the computation. */
export type NestAnswer = { nest: Nest } | { refused: string };

addEventListener('message', ({ data }: MessageEvent<NestInput>) => {
  let answer: NestAnswer;
  try {
    answer = { nest: nestPieces(data) };
  } catch (error) {
    answer = { refused: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
