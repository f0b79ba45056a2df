import { describe, expect, it } from 'vitest';
import { faceSize, farFigure, roomForOne, shared, sharedAtOnce } from '#app/laying-up/clocks/face-size.ts';

/** CSS px of common phones, upright. */
const phones = [
  [320, 568],
  [360, 640],
  [360, 740],
  [375, 667],
  [390, 844],
  [412, 915],
] as const;
const upright = phones.map(([width, height]) => ({ width, height }));
const onItsSide = phones.map(([height, width]) => ({ width, height }));
const cup = farFigure(13 * 60 + 42);

/** mm on a screen of 160 px to the inch, by hand: digits are 0.672 of the font size. */
const digitMm = (fontSize: number) => (fontSize * 0.672 * 25.4) / 160;

describe('the figures of a clock across the shop', () => {
  it('are minutes and seconds, and above an hour hours and minutes', () => {
    expect(cup).toEqual({ parts: ['13', '42'], units: ['min', 's'] });
    expect(farFigure(5).parts).toEqual(['0', '05']);
    expect(farFigure(3600)).toEqual({ parts: ['1', '00'], units: ['h', 'min'] });
    expect(farFigure(7 * 3600 + 65).parts).toEqual(['7', '01']);
    expect(farFigure(-61).parts).toEqual(['1', '01']);
  });

  it.each([...upright, ...onItsSide])('of one clock are 20 mm tall at $width x $height', (screen) => {
    const size = faceSize(cup, roomForOne(screen));
    expect(digitMm(size.fontSize)).toBeGreaterThanOrEqual(20);
    expect(size.farEnough).toBe(true);
    expect(size.from).toBeGreaterThanOrEqual(4);
  });

  it.each([...upright, ...onItsSide])('stay inside their room at $width x $height', (screen) => {
    const rooms = [roomForOne(screen), shared(screen, 2).room, shared(screen, 4).room];
    for (const [i, room] of rooms.entries()) {
      const { fontSize, stacked } = faceSize(cup, room, i === 0 ? undefined : 0);
      const wide = stacked ? 2 * 0.632 : 4 * 0.632 + 0.3;
      expect(fontSize * wide).toBeLessThanOrEqual(room.width);
      expect(fontSize * (stacked ? 2 : 1) * 0.672).toBeLessThanOrEqual(room.height);
    }
  });

  it('are read from 4 m side by side on a phone of 844 px on its side', () => {
    const { columns, room } = shared({ width: 844, height: 390 }, 2);
    expect(columns).toBe(2);
    expect(faceSize(cup, room).farEnough).toBe(true);
  });

  it.each([...upright, ...onItsSide])(
    'of several are 20 mm tall at $width x $height: those that would be smaller come in turn',
    (screen) => {
      for (const count of [2, 3, 4, 7]) {
        const atOnce = sharedAtOnce(screen, new Array(count).fill(cup), 28);
        const above = atOnce > 1 ? 28 : 0;
        const { fontSize } = faceSize(cup, shared(screen, atOnce, above).room, 0);
        expect(digitMm(fontSize), `${atOnce} of ${count}`).toBeGreaterThanOrEqual(20);
      }
    },
  );

  it('of two share a large phone held upright and a common one on its side', () => {
    const two = [cup, cup];
    expect(sharedAtOnce({ width: 412, height: 915 }, two)).toBe(2);
    expect(sharedAtOnce({ width: 740, height: 360 }, two)).toBe(2);
    expect(sharedAtOnce({ width: 360, height: 740 }, two)).toBe(1);
  });

  it('of four are smaller than of two, and say from how far they are read', () => {
    const screen = { width: 360, height: 740 };
    const two = faceSize(cup, shared(screen, 2).room);
    const four = faceSize(cup, shared(screen, 4).room);
    expect(four.fontSize).toBeLessThan(two.fontSize);
    expect(four.from).toBeCloseTo((200 * digitMm(four.fontSize)) / 1000, 6);
  });

  it('share the screen one above the other upright, two by two on its side', () => {
    expect(shared({ width: 360, height: 740 }, 3).columns).toBe(1);
    expect(shared({ width: 740, height: 360 }, 3).columns).toBe(3);
    expect(shared({ width: 740, height: 360 }, 4).columns).toBe(2);
  });
});
