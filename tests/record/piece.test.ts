import { describe, expect, it } from 'vitest';
import { piece } from '#shared/record/piece.ts';

const wraps = {
  stations: [
    { at: 0, value: 3 },
    { at: 3, value: 2 },
  ],
  between: 'straight',
};
const skin = {
  id: 'one',
  name: 'Skin',
  kind: 'cloth',
  shape: { by: 'plies', plies: wraps },
  start: 0,
  clock: 0,
  angle: 0,
  overlap: 0.015,
};

describe('a piece of a plan', () => {
  it('is read with its plies, its width or its wall, and keeps what a newer version wrote', () => {
    for (const shape of [skin.shape, { by: 'width', width: wraps }, { by: 'wall', wall: wraps }]) {
      const written = { ...skin, shape, color: 'blue' };
      expect(piece.parse(written)).toEqual(written);
    }
  });

  it('is refused without a shape, with one station, or with a value of nothing', () => {
    const one = { ...wraps, stations: wraps.stations.slice(0, 1) };
    const none = { ...wraps, stations: [{ at: 0, value: 0 }, ...wraps.stations.slice(1)] };
    for (const shape of [
      undefined,
      { by: 'plies', width: wraps },
      { by: 'plies', plies: one },
      { by: 'plies', plies: none },
    ]) {
      expect(piece.safeParse({ ...skin, shape }).success).toBe(false);
    }
  });
});
