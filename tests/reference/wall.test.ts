// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import { describe, expect, it } from 'vitest';
import {
  developPiece,
  outlineArea,
  type PieceSpec,
  type Point,
  rollPieces,
  type Shape,
  sampleShape,
  shapeAt,
  stationValues,
} from '#calc';

const INCH = 0.0254;

function straight(...pairs: readonly (readonly [at: number, value: number])[]): Shape {
  return { between: 'straight', stations: pairs.map(([at, value]) => ({ at, value })) };
}

function piece(wraps: Shape, thickness: number, overlap = 0): PieceSpec {
  return { kind: 'cloth', thickness, start: 0, clock: 0, angle: 0, overlap, wraps };
}

describe('layers from a width of cloth', () => {
  const mandrel = { startDiameter: 1.5 * INCH, thickness: 0.01 * INCH, overlap: 0 };

  // Common practice, no source: 20 in of cloth on a 1.5 in mandrel at 0.010 in a ply is four layers, 10 in a little over two.
  it('practice: 20 in on a 1.5 in mandrel at 0.010 in are four, and 10 in a little over two', () => {
    expect(Math.floor(stationValues({ ...mandrel, width: 20 * INCH }).plies)).toBe(4);
    const { plies } = stationValues({ ...mandrel, width: 10 * INCH });
    expect(plies).toBeGreaterThan(2);
    expect(plies).toBeLessThan(2.2);
  });

  // Common practice, no source: four plies of common carbon cloth measure about 0.040 in, two 0.020 in.
  it('practice: four plies of common carbon cloth are about 0.040 in of wall, two 0.020 in', () => {
    for (const [plies, wall] of [
      [4, 0.04],
      [2, 0.02],
    ] as const) {
      expect(stationValues({ ...mandrel, plies }).wall).toBeCloseTo(wall * INCH, 9);
    }
  });

  // Math Forum, 2003: length of material on a roll, pi (Do^2 - Di^2)/(4 t).
  it('arithmetic: is the length of material on a roll, at every place along the tube', () => {
    const mandrels = straight([0, 0.05], [3, 0.03]);
    const { pieces, outsideDiameter, diameter } = rollPieces({
      mandrel: mandrels,
      pieces: [piece(straight([0, 3], [3, 2.3]), 0.0003)],
      length: 3,
      step: 0.05,
    });
    pieces[0]?.width.forEach((width, i) => {
      const [outside = 0, inside = 0] = [outsideDiameter[i], diameter[i]];
      expect(width).toBeCloseTo((Math.PI * (outside ** 2 - inside ** 2)) / (4 * 0.0003), 10);
    });
  });
});

describe('a monotone curve', () => {
  // Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980), the RPN 14 data of Akima's comparison (from memory): radiochemical
  // counts that a plain cubic spline overshoots. Checked is what the method promises, not the printed table.
  it('prescribed: does not overshoot the radiochemical data that made the method known', () => {
    const xs = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20];
    const ys = [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994];
    const shape: Shape = { between: 'smooth', stations: xs.map((at, k) => ({ at, value: ys[k] ?? 0 })) };
    const read = sampleShape({ shape, from: 7.99, to: 20, step: 0.001 });
    expect([...read].every((value, k) => value >= (read[k - 1] ?? 0) && value <= 0.999994)).toBe(true);
    expect(shapeAt({ shape, at: 9.2 })).toBe(0.469428);
  });
});

describe('the area of an outline', () => {
  // Simpson's rule on the width formula, and for the cone on the sector formula r^2/2: neither goes through the outline.
  it('is on a cylinder the integral of the width, to 1e-6', () => {
    const wraps: Shape = {
      between: 'smooth',
      stations: straight([0, 3], [0.6, 6], [1.5, 4], [3, 2]).stations,
    };
    const roll = rollPieces({
      mandrel: straight([0, 0.05], [3, 0.05]),
      pieces: [piece(wraps, 0.0003, 0.015)],
      length: 3,
      step: 0.1,
    });
    const area = outlineArea(developPiece({ roll, piece: 0, chordError: 1e-8 }));
    const width = (at: number): number => {
      const n = shapeAt({ shape: wraps, at });
      return Math.PI * n * (0.05 + n * 0.0003) + 0.015;
    };
    expect(Math.abs(area / simpson(width, [0, 0.6, 1.5, 3]) - 1)).toBeLessThan(1e-6);
  });

  it('is on a cone, of cloth without thickness, the sector between its arcs, to 1e-6', () => {
    const wraps = straight([0, 4], [3, 2]);
    const roll = rollPieces({
      mandrel: straight([0, 0.04], [3, 0.03]),
      pieces: [piece(wraps, 1e-6)],
      length: 3,
      step: 0.1,
    });
    const area = outlineArea(developPiece({ roll, piece: 0, chordError: 1e-8 }));
    const half = Math.atan(0.005 / 3);
    const [near, far] = [0.015 / Math.sin(half), 0.02 / Math.sin(half)];
    const turned = (r: number): number =>
      2 * Math.PI * (2 + (2 * (r - near)) / (far - near)) * Math.sin(half);
    const sector = simpson((r) => r * turned(r), [near, far]);
    // Plies of a micrometer add pi N^2 t to the width: two parts in ten thousand of the diameter here.
    const thick = simpson((x) => Math.PI * (4 - (2 * x) / 3) ** 2 * 1e-6, [0, 3]);
    expect(Math.abs(area / (sector + thick) - 1)).toBeLessThan(1e-6);
  });
});

// Development of a right circular cone: sector angle 2 pi sin(half-angle), radius the slant length. Descriptive
// geometry; for instance do Carmo, Differential Geometry of Curves and Surfaces, section 4-2 (from memory).
describe('a developed cone', () => {
  it('arithmetic: one turn of thin cloth is the sector of the textbook', () => {
    const roll = rollPieces({
      mandrel: straight([0, 0.05], [1, 0.1]),
      pieces: [piece(straight([0, 1], [1, 1]), 1e-6)],
      length: 1,
      step: 0.1,
    });
    const { marks, halfAngle } = developPiece({ roll, piece: 0 });
    const slant = 0.025 / Math.sin(halfAngle);
    const sector = 2 * Math.PI * Math.sin(halfAngle);
    for (const { x, edge } of marks) {
      expect(edge.x).toBeCloseTo((slant + x) * Math.cos(sector) - slant, 5);
      expect(edge.y).toBeCloseTo((slant + x) * Math.sin(sector), 5);
    }
  });
});

describe('a flat piece against its rolled shape unfolded', () => {
  // The rolled cloth as a fine mesh in space, wound on itself ply by ply, unfolded triangle by triangle from
  // the lengths of the sides alone. No formula of the development is in it.
  it.each([
    ['tapering, 4 to 2 wraps', straight([0, 0.04], [3, 0.03]), [piece(straight([0, 4], [3, 2]), 0.0003)]],
    ['widening, thick cloth', straight([0, 0.03], [3, 0.05]), [piece(straight([0, 3], [3, 5.5]), 0.0006)]],
    ['a cylinder', straight([0, 0.05], [3, 0.05]), [piece(straight([0, 3], [3, 2]), 0.0003)]],
    [
      'on a piece before it',
      straight([0, 0.04], [3, 0.03]),
      [piece(straight([0, 3], [3, 3]), 0.0003), piece(straight([0, 3], [3, 2]), 0.0003)],
    ],
  ] as const)('is where the mesh says it is, to 0.1 mm on 3 m: %s', (_, mandrel, pieces) => {
    const roll = rollPieces({ mandrel, pieces, length: 3, step: 0.05 });
    const last = pieces.length - 1;
    const { outline } = developPiece({ roll, piece: last, chordError: 1e-6 });
    const spec = pieces[last];
    if (!spec) throw new Error('no piece');
    let compared = 0;
    for (let z = 0; z <= 2.951; z += 0.1475) {
      for (const point of unfolded({ z, mandrel, spec, under: last === 0 ? 0 : 3 * 0.0003 })) {
        expect(distance(point, outline)).toBeLessThan(0.0001);
        compared += 1;
      }
    }
    expect(compared).toBe(42);
  });
});

type Space = readonly [x: number, y: number, z: number];

/** Free-edge corners of one narrow strip round the tube from z to z + 5 mm, as they lie in the flat. */
function unfolded(input: { z: number; mandrel: Shape; spec: PieceSpec; under: number }): Point[] {
  const { mandrel, spec, under } = input;
  const rows = [input.z, input.z + 0.005].map((z) => {
    const radius = shapeAt({ shape: mandrel, at: z }) / 2 + under;
    const wraps = shapeAt({ shape: spec.wraps ?? mandrel, at: z });
    const steps = 4000;
    return Array.from({ length: steps + 1 }, (_, k): Space => {
      const angle = (2 * Math.PI * wraps * k) / steps;
      const r = radius + (spec.thickness * angle) / (2 * Math.PI);
      return [r * Math.cos(angle), r * Math.sin(angle), z];
    });
  });
  const [low = [], high = []] = rows;
  const along = slantTo(mandrel, input.z);
  let a: Point = { x: along, y: 0 };
  let b: Point = { x: along + apart(low[0], high[0]), y: 0 };
  for (let k = 1; k < low.length; k += 1) {
    const c = third(a, b, apart(low[k - 1], low[k]), apart(high[k - 1], low[k]));
    b = third(c, b, apart(low[k], high[k]), apart(high[k - 1], high[k]));
    a = c;
  }
  return [a, b];
}

/** The third corner of a triangle, to the left of the way from a to b, from its distances to both. */
function third(a: Point, b: Point, fromA: number, fromB: number): Point {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const along = (fromA ** 2 - fromB ** 2 + long ** 2) / (2 * long);
  const off = Math.sqrt(Math.max(0, fromA ** 2 - along ** 2));
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  return { x: a.x + along * ux - off * uy, y: a.y + along * uy + off * ux };
}

function apart(a: Space = [0, 0, 0], b: Space = [0, 0, 0]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function slantTo(mandrel: Shape, z: number): number {
  const rise = (shapeAt({ shape: mandrel, at: z }) - shapeAt({ shape: mandrel, at: 0 })) / 2;
  return Math.hypot(z, rise);
}

function distance(point: Point, outline: readonly Point[]): number {
  return outline.reduce((least, a, k) => {
    const b = outline[k + 1] ?? outline[0] ?? a;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const long = dx * dx + dy * dy;
    const share =
      long === 0 ? 0 : Math.max(0, Math.min(1, ((point.x - a.x) * dx + (point.y - a.y) * dy) / long));
    return Math.min(least, Math.hypot(point.x - a.x - share * dx, point.y - a.y - share * dy));
  }, Number.POSITIVE_INFINITY);
}

function simpson(value: (x: number) => number, corners: readonly number[]): number {
  let sum = 0;
  for (let k = 1; k < corners.length; k += 1) {
    const [from = 0, to = 0] = [corners[k - 1], corners[k]];
    const slices = 2000;
    const step = (to - from) / slices;
    for (let i = 0; i < slices; i += 1) {
      const x = from + i * step;
      sum += (step / 6) * (value(x) + 4 * value(x + step / 2) + value(x + step));
    }
  }
  return sum;
}
