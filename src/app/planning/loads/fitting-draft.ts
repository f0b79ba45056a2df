import { type Signal, signal } from '@preact/signals';
import { allGood, type QuantityInput, quantityInput } from '#app/parts/quantity-input.ts';
import type { Fitting } from '#shared/record/load-plan.ts';
import { onTube, placeInput } from './place-input.ts';

type Clamp = Extract<Fitting, { kind: 'clamp' }>;
type Bond = Extract<Fitting, { kind: 'bond' }>;

export interface FittingDraft {
  kind: Signal<Fitting['kind']>;
  name: Signal<string>;
  pressed: Signal<boolean>;
  at: QuantityInput;
  /** Of a clamp, and along a bond */
  squeeze: QuantityInput;
  force: QuantityInput;
  width: QuantityInput;
  length: QuantityInput;
  glue: QuantityInput;
  shearModulus: QuantityInput;
  shearStrength: QuantityInput;
  modulus: QuantityInput;
  wall: QuantityInput;
  torque: QuantityInput;
}

const positive = { positive: true };

export function fittingDraft(fitting: Fitting | undefined, tube: number): FittingDraft {
  const clamp: Partial<Clamp> = fitting?.kind === 'clamp' ? fitting : {};
  const bond: Partial<Bond> = fitting?.kind === 'bond' ? fitting : {};
  return {
    kind: signal(fitting?.kind ?? 'clamp'),
    name: signal(fitting?.name ?? ''),
    pressed: signal(false),
    at: placeInput(fitting?.at, tube),
    squeeze: quantityInput(clamp.force, { quantity: 'force', max: 1e6, ...positive }),
    force: quantityInput(bond.force, { quantity: 'force', min: 0, max: 1e6 }),
    width: quantityInput(clamp.width, { quantity: 'length', max: 1, ...positive }),
    length: quantityInput(bond.length, { quantity: 'length', max: 1, ...positive }),
    glue: quantityInput(bond.glue, { quantity: 'thickness', max: 0.01, ...positive }),
    shearModulus: quantityInput(bond.shearModulus, { quantity: 'stress', max: 1e11, ...positive }),
    shearStrength: quantityInput(bond.shearStrength, { quantity: 'stress', max: 1e9, ...positive }),
    modulus: quantityInput(bond.modulus, { quantity: 'modulus', max: 1e12, ...positive }),
    wall: quantityInput(bond.wall, { quantity: 'thickness', max: 0.1, ...positive }),
    torque: quantityInput(bond.torque, { quantity: 'moment', min: 0, max: 1e6, optional: true }),
  };
}

const bondFields = [
  'at',
  'length',
  'glue',
  'shearModulus',
  'shearStrength',
  'modulus',
  'wall',
  'force',
] as const;
const clampFields = ['at', 'width', 'squeeze'] as const;

const values = <Name extends keyof FittingDraft>(
  draft: FittingDraft & Record<Name, QuantityInput>,
  names: readonly Name[],
): Record<Name, number> | undefined => {
  const told = names.map((name) => [name, draft[name].si.value] as const);
  if (told.some(([, si]) => si === undefined)) return undefined;
  return Object.fromEntries(told) as Record<Name, number>;
};

export function fittingName({ name, kind }: FittingDraft): string {
  return name.value.trim() || (kind.value === 'clamp' ? 'Clamp' : 'Bond');
}

export const nameProblem = ({ name }: FittingDraft): string | undefined =>
  name.value.trim().length > 200 ? 'That is too long for a name: shorten it.' : undefined;

/** The fitting as typed; undefined while a figure is missing. */
export function fittingOfDraft(draft: FittingDraft, id: string, tube: number): Fitting | undefined {
  const name = fittingName(draft);
  if (draft.kind.value === 'clamp') {
    const told = values(draft, clampFields);
    if (!told) return undefined;
    const { squeeze: force, ...where } = told;
    return { id, kind: 'clamp', name, ...where, at: onTube(told.at, tube), force };
  }
  const told = values(draft, bondFields);
  const torque = draft.torque.si.value;
  return (
    told && {
      id,
      kind: 'bond',
      name,
      ...told,
      at: onTube(told.at, tube),
      ...(torque !== undefined && { torque }),
    }
  );
}

/** Shows what is wrong; true when it can be saved. */
export function fittingIsGood(draft: FittingDraft): boolean {
  draft.pressed.value = true;
  const names = draft.kind.value === 'clamp' ? clampFields : ([...bondFields, 'torque'] as const);
  return allGood(names.map((name) => draft[name])) && nameProblem(draft) === undefined;
}
