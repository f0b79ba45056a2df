import { docsOf } from '#app/state/documents.ts';
import type { Structure } from '#shared/record/structure.ts';

/** What a structure weighs as far as it is written down: its budget, else all its parts; kg */
function weightOf({ budget, parts }: Structure): number | undefined {
  if (budget !== undefined && budget > 0) return budget;
  const known = parts.map((p) => {
    const one = p.weighed ?? p.planned ?? p.budget;
    return one === undefined ? undefined : one * p.quantity;
  });
  const sum = known.reduce<number | undefined>(
    (total, mass) => (total === undefined || mass === undefined ? undefined : total + mass),
    0,
  );
  return sum || undefined;
}

export interface ShareOfStructure {
  name: string;
  /** How many tubes of the plan are in it. */
  tubes: number;
  /** kg */
  weighs: number;
}

/** The structures that a plan's tubes go into, where it is known what they weigh. */
export function structuresWith(plan: string): ShareOfStructure[] {
  return docsOf('structure').flatMap(({ body }) => {
    const weighs = weightOf(body);
    const tubes = body.parts.reduce((sum, p) => sum + (p.plan === plan ? p.quantity : 0), 0);
    return weighs === undefined || tubes === 0 ? [] : [{ name: body.name, tubes, weighs }];
  });
}
