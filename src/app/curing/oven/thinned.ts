import type { Reading } from '#calc';

/**
 * As many readings as a picture can show: of every px column the first, the coldest, the hottest and the last, so
 * that no peak is lost. Few readings stay as they are.
 */
export function thinned(readings: readonly Reading[], px: number): readonly Reading[] {
  const [first, last] = [readings[0], readings.at(-1)];
  if (!first || !last || readings.length <= 4 * px) return readings;
  const wide = (last.time - first.time) / px;
  const kept: Reading[] = [];
  let column: Reading[] = [];
  let ends = first.time + wide;
  for (const reading of readings) {
    if (reading.time > ends) {
      kept.push(...cornersOf(column));
      column = [];
      while (wide > 0 && reading.time > ends) ends += wide;
    }
    column.push(reading);
  }
  return [...kept, ...cornersOf(column)];
}

function cornersOf(column: readonly Reading[]): Reading[] {
  const [first, last] = [column[0], column.at(-1)];
  if (!first || !last) return [];
  const coldest = column.reduce((a, b) => (b.temperature < a.temperature ? b : a));
  const hottest = column.reduce((a, b) => (b.temperature > a.temperature ? b : a));
  const between = coldest.time <= hottest.time ? [coldest, hottest] : [hottest, coldest];
  return [...new Set([first, ...between, last])];
}
