import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** px; compare.css has the same */
const factsWidth = 108;
const columnWidth = 112;
/** So many stand ready to both sides: a thumb's throw, or a press of the tab key, finds the next one there. */
const ahead = 3;

export interface Columns {
  from: number;
  /** After the last one */
  to: number;
}

/** The columns to draw: those in sight and a few to both sides. */
export function columnsInView(view: { left: number; width: number; count: number }): Columns {
  const right = view.left + Math.max(0, view.width - factsWidth);
  return {
    from: Math.min(Math.max(0, Math.floor(view.left / columnWidth) - ahead), view.count),
    to: Math.min(view.count, Math.ceil(right / columnWidth) + ahead),
  };
}

/** Draws what slides into sight, so that fifty builds cost no more than the few that a phone shows. */
export function useColumnsInView(count: number): { slide: RefObject<HTMLElement | null>; columns: Columns } {
  const slide = useRef<HTMLElement>(null);
  const columns = useSignal(columnsInView({ left: 0, width: window.innerWidth, count }));
  useEffect(() => {
    const element = slide.current;
    if (!element) return;
    const look = () => {
      const next = columnsInView({ left: element.scrollLeft, width: window.innerWidth, count });
      const { from, to } = columns.peek();
      if (next.from !== from || next.to !== to) columns.value = next;
    };
    look();
    element.addEventListener('scroll', look, { passive: true });
    window.addEventListener('resize', look);
    return () => {
      element.removeEventListener('scroll', look);
      window.removeEventListener('resize', look);
    };
  }, [count]);
  return { slide, columns: columns.value };
}

/** Characters of a figure or a word that fit beside each other in a column, about. */
const perLine = 12;

/** Lines that a text takes in its column, about: a row keeps its height while its longest cell is out of sight. */
export function linesOf(text: string): number {
  let lines = 1;
  let used = 0;
  for (const { length } of text.split(' ')) {
    if (used > 0 && used + 1 + length > perLine) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? 1 : 0) + length;
  }
  return lines;
}
