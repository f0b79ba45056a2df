import type { Page } from '@playwright/test';

/** What bigger letters lose: cut off, one over the other, or off the side. */
export async function lossesOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const said: string[] = [];
    const dialog = [...document.querySelectorAll('dialog[open]')].at(-1);
    const root = dialog ?? document.body;
    if (document.documentElement.scrollWidth > innerWidth) {
      said.push(`the screen is ${document.documentElement.scrollWidth} px wide`);
    }
    if (dialog && dialog.scrollWidth > dialog.clientWidth + 1) said.push('the sheet scrolls sideways');
    const short = (text: string) => text.replace(/\s+/g, ' ').trim().slice(0, 40);
    const shown = (e: Element) =>
      e.checkVisibility({ visibilityProperty: true }) &&
      // Digits as big as the screen keep to it by themselves: their lines are set closer than letters are high.
      !e.closest('.visually-hidden, .undo-said, .clock-face-figure');
    for (const e of root.querySelectorAll<HTMLElement>('*')) {
      if (e === dialog || !shown(e) || e instanceof SVGElement || !e.textContent?.trim()) continue;
      const { overflowX, overflowY } = getComputedStyle(e);
      const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
      if (hides(overflowX) && e.scrollWidth > e.clientWidth + 2)
        said.push(`cut at its side: ${short(e.textContent)}`);
      if (hides(overflowY) && e.scrollHeight > e.clientHeight + 2)
        said.push(`cut below: ${short(e.textContent)}`);
    }
    // A wide table scrolls by itself.
    const scrolls = (e: Element) => {
      for (let at: Element | null = e; at; at = at.parentElement)
        if (['auto', 'scroll'].includes(getComputedStyle(at).overflowX)) return at !== dialog;
      return false;
    };
    const texts: { box: DOMRect; text: string; element: Element }[] = [];
    const walker = document.createTreeWalker(root, 4);
    while (walker.nextNode()) {
      const element = walker.currentNode.parentElement;
      const text = walker.currentNode.textContent?.trim();
      if (!element || !text || !shown(element) || element.closest('script, style, title, option')) continue;
      const range = document.createRange();
      range.selectNodeContents(walker.currentNode);
      if (element.matches('.big-figure-number') && range.getClientRects().length > 1)
        said.push(`a figure in pieces: ${short(text)}`);
      for (const box of range.getClientRects()) {
        if (box.width < 2 || box.height < 2) continue;
        // Figures are a good half as high as their line.
        const rim = element.matches('.big-figure-number') ? 0.2 * box.height : 0;
        const ink = new DOMRect(box.x, box.y + rim, box.width, box.height - 2 * rim);
        texts.push({ box: ink, text: short(text), element });
        if ((box.right > innerWidth + 1 || box.left < -1) && !scrolls(element))
          said.push(`off the side: ${short(text)}`);
      }
    }
    // Bars that stay in their place cover what scrolls: only what scrolls together can be in each other's way.
    const bar = (e: Element) =>
      [
        ...(function* () {
          for (let at: Element | null = e; at; at = at.parentElement) yield at;
        })(),
      ].find((at) => ['sticky', 'fixed'].includes(getComputedStyle(at).position)) ?? null;
    const layers = texts.map(({ element }) => bar(element));
    texts.forEach((one, i) => {
      texts.slice(i + 1).forEach((other, k) => {
        if (layers[i] !== layers[i + 1 + k] || one.element === other.element) return;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        // Of the height of a line, letters fill the middle.
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        const deep = Math.min(one.box.height, other.box.height);
        if (across > 2 && down > 0.45 * deep) said.push(`over each other: ${one.text} | ${other.text}`);
      });
    });
    // A control whose words stick out of it lies on its neighbors.
    for (const control of root.querySelectorAll<HTMLElement>('button, a[href], .field-hint, label')) {
      // A question mark has room for a thumb all round it.
      if (
        !shown(control) ||
        control.matches('.ask') ||
        control.scrollWidth <= control.clientWidth + 2 ||
        control.clientWidth === 0
      )
        continue;
      said.push(`sticks out: ${short(control.textContent ?? '')}`);
    }
    const bars = [...root.querySelectorAll<HTMLElement>('.clock-strip, .screen-actions, .tabs')].filter((b) =>
      ['sticky', 'fixed'].includes(getComputedStyle(b).position),
    );
    const taken = bars.reduce((sum, b) => sum + b.getBoundingClientRect().height, 0);
    if (!dialog && innerHeight - taken < 120) said.push(`bars leave ${Math.round(innerHeight - taken)} px`);
    return [...new Set(said)];
  });
}
