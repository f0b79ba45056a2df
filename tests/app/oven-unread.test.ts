import { expect, it } from 'vitest';
import { type Gap, unreadTime } from '#app/curing/oven/oven-series.ts';

const gap = (id: string, from: number, to: number) =>
  ({ channel: { channel: id, name: id }, from, to }) as unknown as Gap;

it('time that two sensors leave out together is unread once', () => {
  expect(unreadTime([gap('a', 0, 3600), gap('b', 60, 3660)])).toBe(3660);
});

it('stretches apart from each other add up, in any order', () => {
  expect(unreadTime([gap('a', 7200, 9000), gap('a', 0, 3600)])).toBe(5400);
});

it('a stretch inside another adds nothing, and none is nothing', () => {
  expect(unreadTime([gap('a', 0, 3600), gap('b', 600, 1200)])).toBe(3600);
  expect(unreadTime([])).toBe(0);
});
