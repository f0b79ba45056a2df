// arithmetic, measured, prescribed, practice: as explained in laminate.test.ts.

import { describe, expect, it } from 'vitest';
import { tubeSection, widthForWraps, wrapsForWidth } from '#calc';

const INCH = 0.0254;

describe('the roll', () => {
  const core = { startDiameter: 0.025, plyThickness: 0.0003 };

  // Math Forum, 2003: length of material on a roll, pi (Do^2 - Di^2)/(4 t).
  it('arithmetic: is the length of material on a roll', () => {
    for (const wraps of [1, 2.5, 8, 40]) {
      const outside = core.startDiameter + 2 * wraps * core.plyThickness;
      const length = (Math.PI * (outside ** 2 - core.startDiameter ** 2)) / (4 * core.plyThickness);
      expect(widthForWraps({ wraps, ...core })).toBeCloseTo(length, 12);
      expect(wrapsForWidth({ width: length, ...core })).toBeCloseTo(wraps, 10);
    }
  });

  it('arithmetic: is the sum of its rings, each at the middle of its ply', () => {
    let sum = 0;
    for (let ring = 1; ring <= 12; ring += 1) {
      sum += Math.PI * (core.startDiameter + (2 * ring - 1) * core.plyThickness);
    }
    expect(widthForWraps({ wraps: 12, ...core })).toBeCloseTo(sum, 12);
  });

  // The arc length of an Archimedean spiral, by numerical quadrature: another model of the same roll.
  it('is the length of the spiral within 2e-5', () => {
    for (const wraps of [1, 3.3, 10]) {
      const slices = 20000;
      const step = (2 * Math.PI * wraps) / slices;
      const growth = core.plyThickness / (2 * Math.PI);
      let length = 0;
      for (let k = 0; k < slices; k += 1) {
        length += Math.hypot(core.startDiameter / 2 + growth * (k + 0.5) * step, growth) * step;
      }
      expect(Math.abs(widthForWraps({ wraps, ...core }) / length - 1)).toBeLessThan(2e-5);
    }
  });
});

describe('the section of a tube', () => {
  // Schedule 40 steel pipe, AISC Manual and ASME B36.10 (from memory): outside and wall in in, area in in2, I in in4.
  it.each([
    [1.315, 0.133, 0.494, 0.0873],
    [2.375, 0.154, 1.075, 0.666],
    [4.5, 0.237, 3.174, 7.233],
  ])('arithmetic: pipe of %f in outside is as in the manual', (outside, wall, area, i) => {
    const section = tubeSection({ innerDiameter: (outside - 2 * wall) * INCH, wall: wall * INCH });
    expect(Math.abs(section.area / INCH ** 2 / area - 1)).toBeLessThan(0.003);
    expect(Math.abs(section.i / INCH ** 4 / i - 1)).toBeLessThan(0.003);
  });

  // Hot-finished circular hollow sections, EN 10210-2 (from memory): mm, area in cm2, I and J in cm4.
  it.each([
    [48.3, 3.2, 4.53, 11.6, 23.2],
    [60.3, 3.2, 5.74, 23.5, 46.9],
  ])('arithmetic: hollow section of %f mm is as in the standard', (outside, wall, area, i, j) => {
    const section = tubeSection({ innerDiameter: (outside - 2 * wall) / 1000, wall: wall / 1000 });
    expect(section.area * 1e4).toBeCloseTo(area, 2);
    expect(section.i * 1e8).toBeCloseTo(i, 1);
    expect(section.j * 1e8).toBeCloseTo(j, 1);
  });
});
