import { type Signal, signal } from '@preact/signals';
import { type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { Cloth } from '#shared/record/cloth.ts';
import { usualMask, usualRoll, usualSelvage } from './lay-out.ts';

/** What is set for laying out. It stays while the builder looks at something else, and is no part of the plan. */
export interface CuttingDraft {
  tubes: QuantityInput;
  mask: QuantityInput;
  selvage: QuantityInput;
  /** Of each cloth, by its document. */
  rolls: Map<string, QuantityInput>;
  spliced: Signal<ReadonlySet<string>>;
}

const drafts = new Map<string, CuttingDraft>();

export function cuttingDraft(plan: string): CuttingDraft {
  const draft = drafts.get(plan) ?? {
    tubes: quantityInput(1, { quantity: 'count', min: 1, max: 50 }),
    mask: quantityInput(usualMask, { quantity: 'length', min: 0, max: 0.2 }),
    selvage: quantityInput(usualSelvage, { quantity: 'length', min: 0, max: 0.2 }),
    rolls: new Map(),
    spliced: signal<ReadonlySet<string>>(new Set()),
  };
  drafts.set(plan, draft);
  return draft;
}

/** The width of a cloth's roll, as the shelf has it until the builder writes another. */
export function rollInput({ rolls }: CuttingDraft, doc: string, cloth: Cloth): QuantityInput {
  const input =
    rolls.get(doc) ?? quantityInput(cloth.rollWidth ?? usualRoll, { quantity: 'length', min: 0.01, max: 5 });
  rolls.set(doc, input);
  return input;
}

export function setSpliced({ spliced }: CuttingDraft, piece: string, yes: boolean): void {
  const next = new Set(spliced.value);
  if (yes) next.add(piece);
  else next.delete(piece);
  spliced.value = next;
}
