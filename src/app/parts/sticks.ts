import { useMemo } from 'preact/hooks';

/**
 * What sticks to the head or the foot of the screen covers what lies under it: scrolling to a control, by a keyboard's
 * focus or by a reader, has to stop short of it.
 */
export function useSticks(edge: 'top' | 'bottom'): (part: HTMLElement | null) => void {
  return useMemo(() => {
    const { style } = document.documentElement;
    const property = edge === 'top' ? 'scroll-padding-top' : 'scroll-padding-bottom';
    const watch = new ResizeObserver(([seen]) => {
      if (!seen) return;
      const part = seen.target as HTMLElement;
      const away = Number.parseFloat(getComputedStyle(part)[edge]) || 0;
      style.setProperty(property, `${Math.ceil(part.offsetHeight + away)}px`);
    });
    return (part) => {
      watch.disconnect();
      if (part) watch.observe(part);
      else style.removeProperty(property);
    };
  }, [edge]);
}
