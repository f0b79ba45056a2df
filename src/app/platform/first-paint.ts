import { idle } from './idle.ts';

/** A page in the background draws nothing: it goes on after this, ms */
const longestDraw = 500;

/** When what was rendered first is seen, and the first touch could have been answered. */
export function firstPaint(): Promise<void> {
  return new Promise<void>((resolve) => {
    setTimeout(resolve, longestDraw);
    const painted = 'first-contentful-paint';
    if (!PerformanceObserver.supportedEntryTypes.includes('paint')) {
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve)));
      return;
    }
    const observer = new PerformanceObserver((seen) => {
      if (seen.getEntriesByName(painted).length === 0) return;
      observer.disconnect();
      requestAnimationFrame(() => resolve());
    });
    observer.observe({ type: 'paint', buffered: true });
  }).then(idle);
}
