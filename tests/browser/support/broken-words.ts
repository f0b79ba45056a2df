import type { Page } from '@playwright/test';

/** Words torn in two, and figures typed that do not fit their field. */
export async function brokenWordsOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const said = new Set<string>();
    const shown = (e: Element) =>
      e.checkVisibility({ visibilityProperty: true }) &&
      !e.closest('.visually-hidden, svg, script, style, option');
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      if (!node.parentElement || !shown(node.parentElement)) continue;
      for (const found of (node.textContent ?? '').matchAll(/\p{L}{2,}/gu)) {
        const range = document.createRange();
        range.setStart(node, found.index);
        range.setEnd(node, found.index + found[0].length);
        const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (lines.size > 1) said.add(`torn: ${found[0]}`);
      }
    }
    for (const input of document.querySelectorAll<HTMLInputElement>('input[type=text]')) {
      const isFigure = /^[−-]?\d/.test(input.value);
      if (isFigure && shown(input) && input.scrollWidth > input.clientWidth + 1)
        said.add(`cut: ${input.value}`);
    }
    return [...said];
  });
}
