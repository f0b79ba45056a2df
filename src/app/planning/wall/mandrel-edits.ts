import { shapeAt } from '#calc';
import type { ShapeRecord } from '#shared/record/piece.ts';

export type MandrelKind = 'straight' | 'tapered' | 'measured';

export function mandrelKind({ stations }: ShapeRecord): MandrelKind {
  const first = stations[0]?.value;
  if (stations.every((s) => s.value === first)) return 'straight';
  return stations.length === 2 ? 'tapered' : 'measured';
}

const endsOf = ({ stations }: ShapeRecord) => {
  const [first, last] = [stations[0], stations.at(-1)];
  return { from: first?.at ?? 0, to: last?.at ?? 1, at0: first?.value ?? 0.03, atEnd: last?.value ?? 0.03 };
};

/** One diameter throughout. */
export function straightMandrel(mandrel: ShapeRecord, diameter?: number, length?: number): ShapeRecord {
  const { from, to, at0 } = endsOf(mandrel);
  const value = diameter ?? at0;
  return {
    between: 'straight',
    stations: [
      { at: Math.min(0, from), value },
      { at: length ?? to, value },
    ],
  };
}

/** From one diameter evenly to another. One that was straight keeps both ends, to be changed. */
export function taperedMandrel(mandrel: ShapeRecord): ShapeRecord {
  const { from, to, at0, atEnd } = endsOf(mandrel);
  return {
    between: 'straight',
    stations: [
      { at: from, value: at0 },
      { at: to, value: atEnd },
    ],
  };
}

/** One more place, halfway along its longest stretch. */
export function addDiameter(mandrel: ShapeRecord): ShapeRecord {
  const { stations } = mandrel;
  const gaps = stations.slice(1).map((s, i) => s.at - (stations[i]?.at ?? 0));
  const widest = gaps.indexOf(Math.max(...gaps));
  const at = (stations[widest]?.at ?? 0) + (gaps[widest] ?? 0) / 2;
  const value = shapeAt({ shape: mandrel, at });
  return {
    ...mandrel,
    stations: [...stations.slice(0, widest + 1), { at, value }, ...stations.slice(widest + 1)],
  };
}

export const removeDiameter = (mandrel: ShapeRecord, index: number): ShapeRecord => ({
  ...mandrel,
  stations: mandrel.stations.filter((_, i) => i !== index),
});
