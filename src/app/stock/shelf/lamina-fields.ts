import type { QuantityOptions } from '#app/parts/quantity-input.ts';
import type { strengthKeys } from '#app/planning/carry/cloth-material.ts';
import type { LaminaRecord } from '#shared/record/lamina.ts';

export const stiffnessKeys = ['fiberVolumeFraction', 'e1', 'e2', 'g12', 'nu12'] as const;
export type LaminaKey = (typeof stiffnessKeys)[number] | 'crimp' | (typeof strengthKeys)[number];

interface LaminaField {
  label: string;
  options: QuantityOptions;
  /** What it is, where its label does not say it. */
  about?: string;
}

const GPa = 1e9;
const MPa = 1e6;

const modulus: QuantityOptions = {
  quantity: 'modulus',
  min: 0.1 * GPa,
  max: 1000 * GPa,
  positive: true,
  optional: true,
};
const strength: QuantityOptions = {
  quantity: 'strength',
  min: 0.1 * MPa,
  max: 10_000 * MPa,
  positive: true,
  optional: true,
};

export const laminaFields: Record<LaminaKey, LaminaField> = {
  fiberVolumeFraction: {
    label: 'Fiber volume of the sheet',
    options: { quantity: 'fraction', min: 0.1, max: 0.9, positive: true, optional: true },
    about: 'At which these figures were found',
  },
  e1: { label: 'Along the fibers, E1', options: modulus },
  e2: { label: 'Across the fibers, E2', options: modulus },
  g12: { label: 'In shear, G12', options: modulus },
  nu12: {
    label: 'Poisson’s ratio, nu12',
    options: { quantity: 'number', min: -0.99, max: 0.99, optional: true },
    about: 'How much it narrows when it is pulled along',
  },
  crimp: {
    label: 'What its waves leave',
    options: { quantity: 'fraction', min: 0.3, max: 1, positive: true, optional: true },
    about: 'Of stiffness and strength along the fibers; left empty, all of it',
  },
  alongTension: { label: 'Pulled along the fibers', options: strength },
  alongCompression: { label: 'Pressed along the fibers', options: strength },
  acrossTension: { label: 'Pulled across the fibers', options: strength },
  acrossCompression: { label: 'Pressed across the fibers', options: strength },
  shear: { label: 'In shear', options: strength },
};

/** A figure of a lamina by the name it has in this form. */
export function figureOf(lamina: LaminaRecord | undefined, key: LaminaKey): number | undefined {
  const strengths: Partial<Record<LaminaKey, number>> = lamina?.strengths ?? {};
  const own: Partial<Record<LaminaKey, unknown>> = lamina ?? {};
  const found = strengths[key] ?? own[key];
  return typeof found === 'number' ? found : undefined;
}
