import { type Signal, useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** The width a picture has, in px, so that it is drawn at the size it is seen. */
export function useWidth<T extends Element>(): { ref: { current: T | null }; width: Signal<number> } {
  const ref = useRef<T>(null);
  const width = useSignal(328);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) width.value = Math.round(entry.contentRect.width);
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, [width]);
  return { ref, width };
}

/** How many times the usual 16 px its reader wants letters to be: what is drawn in px gives them that room. */
export const letterScale = () =>
  Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1;
