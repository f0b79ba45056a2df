import type { BuildState } from '#shared/record/build-state.ts';

/** Films counted in one round, and whether this round counts them at all. */
export interface FilmCount {
  in?: number;
  out?: number;
  /** As many out as in, and both counted. */
  even: boolean;
  /** The route has a step that counts them, or somebody counted. */
  counts: boolean;
}

export function filmCount(state: BuildState, round: number): FilmCount {
  const counted = state.films.get(round) ?? {};
  const asked = state.stages.some(
    (s) =>
      s.round === round && s.steps.some(({ step }) => step.role === 'filmsIn' || step.role === 'filmsOut'),
  );
  return {
    ...counted,
    even: counted.in !== undefined && counted.in === counted.out,
    counts: asked || counted.in !== undefined || counted.out !== undefined,
  };
}

/** One sentence on films that are not accounted for; none when they are. */
export function filmsSentence(count: FilmCount): string | undefined {
  if (!count.counts || count.even) return undefined;
  const { in: laid, out } = count;
  if (laid === undefined && out === undefined) return 'Films: neither counted in nor out.';
  if (laid === undefined) return `Films: ${out} out, but nobody counted them in.`;
  if (out === undefined) return `Films: ${laid} went in, none counted out yet.`;
  if (out > laid) return `Films: ${out} out, but only ${laid} counted in. Count both again.`;
  return `Films: ${out} of ${laid} ${out === 1 ? 'is' : 'are'} out.`;
}
