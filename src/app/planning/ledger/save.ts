import { type Doc, saveDoc } from '#app/state/documents.ts';
import type { Structure, StructurePart } from '#shared/record/structure.ts';

export const saveStructure = ({ doc, retired }: Doc<'structure'>, body: Structure) =>
  saveDoc('structure', body, { doc, retired });

/** The structure with this part in the place of the old one, or at its end. */
export function withPart(structure: Structure, part: StructurePart): Structure {
  const known = structure.parts.some((p) => p.id === part.id);
  const parts = known
    ? structure.parts.map((p) => (p.id === part.id ? part : p))
    : [...structure.parts, part];
  return { ...structure, parts };
}

export const withoutPart = (structure: Structure, id: string): Structure => ({
  ...structure,
  parts: structure.parts.filter((p) => p.id !== id),
});
