import type { SectionAt } from '#app/planning/carry/sections-along.ts';
import { settings } from '#app/state/settings.ts';
import { show, showSplit } from '#app/state/show.ts';
import type { WallSection } from '#calc';
import { formatNumber, inUnits } from '#shared/units/format.ts';
import type { Quantity } from '#shared/units/quantity.ts';

export const alongKeys = ['bending', 'twist', 'wall', 'weight', 'area', 'squeezed'] as const;
export type AlongKey = (typeof alongKeys)[number];

export const keyWords: Record<AlongKey, string> = {
  bending: 'Bending',
  twist: 'Twist',
  wall: 'Wall',
  weight: 'Weight',
  area: 'Area',
  squeezed: 'Squeeze',
};

interface Split {
  figure: string;
  unit: string;
}

/** One thing that is drawn along the tube. */
export interface AlongQuantity {
  /** Over the figure. */
  name: string;
  quantity: Quantity;
  least: (section: WallSection) => number | undefined;
  /** Where it differs round the tube. */
  most?: (section: WallSection) => number;
  /** Of what is shaded between the two. */
  shaded?: string;
  split: (si: number) => Split;
}

/** Three figures are as many as such a reckoning is good for. */
export function rough(si: number, quantity: Quantity): Split {
  const { value, unit } = inUnits(si, { quantity, system: settings.value.units });
  const size = value > 0 ? Math.floor(Math.log10(value)) : 0;
  return { figure: formatNumber(Number(value.toPrecision(3)), Math.min(3, Math.max(0, 2 - size))), unit };
}

const stiffness = (si: number) => rough(si, 'stiffness');
export const sayStiffness = (si: number): string => {
  const { figure, unit } = stiffness(si);
  return `${figure}\u00a0${unit}`;
};

/** '1.35 times' */
export const sayTimes = (times: number): string => `${formatNumber(times, 2)} times`;

/** The thicker of the two ends: what giving way is measured against. */
export function thickEnd(sections: readonly SectionAt[]): { section: WallSection; far: boolean } | undefined {
  const [first, last] = [sections[0]?.section, sections.at(-1)?.section];
  if (!first || !last) return undefined;
  const far = last.wallMean > first.wallMean * (1 + 1e-9);
  return { section: far ? last : first, far };
}

/** How much more it gives when squeezed than at its thicker end. */
export function softnessOf(sections: readonly SectionAt[]): (section: WallSection) => number {
  const stiff = thickEnd(sections)?.section.ringStiffness ?? 1;
  return ({ ringStiffness }) => stiff / ringStiffness;
}

export function alongQuantities(sections: readonly SectionAt[]): Record<AlongKey, AlongQuantity> {
  return {
    bending: {
      name: 'Stiffness in bending, EI',
      quantity: 'stiffness',
      least: (s) => s.eiLeast,
      most: (s) => s.eiMost,
      shaded: 'Shaded darker: from the way it bends most easily to the way it is stiffest.',
      split: stiffness,
    },
    twist: {
      name: 'Stiffness in twist, GJ',
      quantity: 'stiffness',
      least: (s) => s.gj,
      split: stiffness,
    },
    wall: {
      name: 'Wall, where it is thinnest',
      quantity: 'thickness',
      least: (s) => s.wallMin,
      most: (s) => s.wallMax,
      shaded: 'Shaded darker: from the thinnest to the thickest round the tube.',
      split: (si) => showSplit(si, 'thickness'),
    },
    weight: {
      name: 'Weight of a length',
      quantity: 'linearDensity',
      least: (s) => s.massPerLength,
      split: (si) => showSplit(si, 'linearDensity'),
    },
    area: {
      name: 'Area of its wall, cut across',
      quantity: 'crossSection',
      least: (s) => s.area,
      split: (si) => rough(si, 'crossSection'),
    },
    squeezed: {
      name: 'Softness when squeezed',
      quantity: 'number',
      least: softnessOf(sections),
      split: (si) => ({ figure: formatNumber(si, 2), unit: 'times' }),
    },
  };
}

/** 'that of end 0, so stiffer' */
export function softnessWords(times: number, sections: readonly SectionAt[]): string {
  const end = `that of ${thickEnd(sections)?.far ? 'the far end' : 'end 0'}`;
  if (Math.abs(times - 1) < 0.005) return end;
  return times > 1 ? `${end}, so softer` : `${end}, so stiffer`;
}

/** What stands under the big figure. */
export function besidesWords(
  key: AlongKey,
  section: WallSection,
  whole: { sections: readonly SectionAt[]; mass: number | undefined },
): string {
  switch (key) {
    case 'bending': {
      const [least, most] = [sayStiffness(section.eiLeast), sayStiffness(section.eiMost)];
      return least === most ? 'whichever way it bends' : `${most} the way it is stiffest`;
    }
    case 'wall': {
      const [least, most] = [show(section.wallMin, 'thickness'), show(section.wallMax, 'thickness')];
      return least === most ? 'all round' : `${most} where it is thickest`;
    }
    case 'weight':
      return whole.mass === undefined
        ? 'The resin of the plan is gone'
        : `${show(whole.mass, 'mass', 0)} the whole tube`;
    case 'squeezed':
      return softnessWords(softnessOf(whole.sections)(section), whole.sections);
    default:
      return '';
  }
}
