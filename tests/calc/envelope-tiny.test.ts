import { expect, it } from 'vitest';
import { envelope } from '#calc';

it('of channels whose times differ by less than any clock tells stays finite', () => {
  const channels = [
    [
      { time: -5e-324, temperature: 273.15 },
      { time: 0, temperature: 323.15 },
    ],
    [
      { time: 0, temperature: 300 },
      { time: 60, temperature: 1e-15 },
    ],
  ];
  for (const pick of ['coldest', 'hottest'] as const) {
    const points = envelope({ channels, pick });
    expect(points.length).toBeGreaterThan(0);
    expect(points.every((p) => Number.isFinite(p.time) && Number.isFinite(p.temperature))).toBe(true);
  }
});
