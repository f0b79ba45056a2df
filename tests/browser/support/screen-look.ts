import type { Page } from '@playwright/test';
import type { Box, Control, Look } from './gloved-thumb.ts';

/** What lies where on a screen that stands at its top. */
export async function lookAt(page: Page): Promise<Look> {
  return page.evaluate(() => {
    const controls = 'a[href], button, input:not([type=file]), select, textarea, summary, label.note-take';
    const dialog = [...document.querySelectorAll('dialog[open]')].at(-1);
    const root = dialog ?? document.body;
    const scroller = dialog ?? document.scrollingElement;
    if (!scroller) throw new Error('nothing scrolls');
    scroller.scrollTop = 0;
    const found = [...root.querySelectorAll<HTMLElement>(controls)]
      .filter((c) => c.getClientRects().length && c.checkVisibility())
      // A touch on its label is a touch on a field.
      .map((c) => c.closest<HTMLElement>('label') ?? c);
    const kindOf = (c: HTMLElement): Control['kind'] => {
      if (c.closest('.keypad')) return 'key';
      if (c.matches('.action')) return 'main';
      if (c.matches('.hold:not(.hold-small)')) return 'hold';
      return c.closest('.tabs') ? 'tab' : 'bench';
    };
    const named = (c: HTMLElement) =>
      (c.getAttribute('aria-label') || c.textContent || c.tagName).replace(/\s+/g, ' ').trim().slice(0, 40);
    const barOf = (c: Element): Element | undefined => {
      for (let at: Element | null = c; at && at !== root; at = at.parentElement) {
        if (['sticky', 'fixed'].includes(getComputedStyle(at).position)) return at;
      }
      return undefined;
    };
    const box = (c: Element): Box => {
      const { left, right, top, bottom } = c.getBoundingClientRect();
      return { left, right, top, bottom };
    };
    const bars = found.map(barOf);
    const all = [...new Set(bars.filter((b) => b !== undefined))];
    return {
      width: innerWidth,
      height: innerHeight,
      further: scroller.scrollHeight - scroller.clientHeight,
      bars: all.map(box),
      controls: found.map((c, i) => {
        const bar = bars[i];
        return { ...box(c), name: named(c), kind: kindOf(c), bar: bar ? all.indexOf(bar) : undefined };
      }),
    };
  });
}

export interface Contrast {
  ratio: number;
  large: boolean;
  text: string;
}

/**
 * The contrast of every text that can be seen, against the worst ground it can lie on: colors of gradients and
 * hatches each count, and shapes drawn before a text in the same picture where they lie under it. WCAG 2.2, 1.4.6.
 */
export async function contrastsOf(page: Page): Promise<Contrast[]> {
  return page.evaluate(() => {
    type Color = [number, number, number, number];
    const colorsIn = (css: string): Color[] =>
      [...css.matchAll(/rgba?\(([^)]+)\)/g)].map(([, inside = '']) => {
        const [r = 0, g = 0, b = 0, a = 1] = inside
          .split(/[\s,/]+/)
          .filter(Boolean)
          .map(Number);
        return [r, g, b, a];
      });
    const over = ([r, g, b, a]: Color, [r2, g2, b2]: Color): Color => [
      r * a + r2 * (1 - a),
      g * a + g2 * (1 - a),
      b * a + b2 * (1 - a),
      1,
    ];
    const light = ([r, g, b]: Color) => {
      const linear = (v: number) =>
        v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4;
      return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
    };
    const ratio = (one: Color, other: Color) => {
      const [a, b] = [light(one), light(other)];
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    };
    const chain = (element: Element) => {
      const up: Element[] = [];
      for (let e: Element | null = element; e; e = e.parentElement) up.push(e);
      return up.reverse();
    };
    /** The shapes of a picture that lie under a text of it. */
    const shapesUnder = (text: Element) => {
      const svg = text.closest('svg');
      if (!svg) return [];
      const box = text.getBoundingClientRect();
      const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
      return [...svg.querySelectorAll('rect, path, polygon, circle, line')].filter((shape) => {
        if (!(shape.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING)) return false;
        const { left, right, top, bottom } = shape.getBoundingClientRect();
        return left <= x && x <= right && top <= y && y <= bottom && !shape.closest('defs, pattern');
      });
    };
    const groundsOf = (element: Element): Color[] => {
      let grounds: Color[] = [[255, 255, 255, 1]];
      for (const e of chain(element)) {
        const style = getComputedStyle(e);
        const own = colorsIn(style.backgroundColor)[0];
        if (own && own[3] > 0) grounds = grounds.map((g) => over(own, g));
        if (style.backgroundImage !== 'none' && !e.matches('select')) {
          const hatch = colorsIn(style.backgroundImage);
          grounds = grounds.flatMap((g) => hatch.map((c) => over(c, g)));
        }
      }
      // A halo in the color of the ground is the ground.
      const style = getComputedStyle(element);
      const halo = style.paintOrder.startsWith('stroke') ? colorsIn(style.stroke)[0] : undefined;
      if (element.closest('svg') && halo) return [halo];
      for (const shape of shapesUnder(element)) {
        const fill = colorsIn(getComputedStyle(shape).fill)[0];
        if (fill && fill[3] > 0) grounds = grounds.map((g) => over(fill, g));
      }
      return grounds;
    };
    const found: { ratio: number; large: boolean; text: string }[] = [];
    const walker = document.createTreeWalker(document.querySelector('dialog[open]') ?? document.body, 4);
    while (walker.nextNode()) {
      const element = walker.currentNode.parentElement;
      const text = walker.currentNode.textContent?.trim();
      if (!element || !text || element.closest('.visually-hidden, script, style, title, option')) continue;
      const box = element.getBoundingClientRect();
      if (box.width < 2 || box.height < 2 || getComputedStyle(element).visibility === 'hidden') continue;
      const style = getComputedStyle(element);
      const svg = element instanceof SVGElement;
      const ink = colorsIn(svg ? style.fill : style.color)[0];
      if (!ink) continue;
      const faded = chain(element).reduce((share, e) => share * Number(getComputedStyle(e).opacity), 1);
      const px = Number.parseFloat(style.fontSize);
      const large = px >= 24 || (px >= 18.66 && Number(style.fontWeight) >= 700);
      const worst = Math.min(
        ...groundsOf(element).map((g) => ratio(over([ink[0], ink[1], ink[2], ink[3] * faded], g), g)),
      );
      found.push({ ratio: worst, large, text: text.slice(0, 40) });
    }
    return found;
  });
}
