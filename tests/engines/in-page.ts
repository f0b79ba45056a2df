// Run inside the page, so each of these stands alone: nothing of this file but itself is there.

export interface Sought {
  /** To be touched, and not only seen. */
  toTouch: boolean;
  role: 'button' | 'link' | 'checkbox' | 'heading' | 'textbox' | 'row' | 'said' | 'figure' | 'text';
  /** The whole name, or the source of a pattern. Spaces of all kinds are one. */
  name: string;
  pattern: boolean;
  /** Only inside this group, list or dialog, by its name. */
  within?: string;
}

export type Place = { x: number; y: number; disabled: boolean } | { missing: string };

/** Where the middle of it is, once it has been scrolled to and nothing covers it. */
export function placeOf({ role, name, pattern, within, toTouch }: Sought): Place {
  const selectors = {
    button: 'button, summary, [role=button]',
    link: 'a[href]',
    checkbox: 'input[type=checkbox], [role=checkbox]',
    heading: 'h1',
    textbox: 'input, textarea, select',
    row: 'tr, [role=row], dl > div, li',
    said: '.undo-said',
    figure: '.big-figure',
    text: 'main *, dialog *, .screen *, aside *, [role=complementary] *, .notices *',
  };
  const plain = (text: string | null | undefined) => (text ?? '').replace(/[\s\u202f\u00a0]+/g, ' ').trim();
  const shown = (node: Node): string => {
    if (node instanceof Text) return node.data;
    if (node instanceof Element && node.getAttribute('aria-hidden') === 'true') return '';
    const inner = [...node.childNodes].map(shown).join('');
    const block = node instanceof Element && !getComputedStyle(node).display.startsWith('inline');
    return block ? ` ${inner} ` : inner;
  };
  const nameOf = (element: Element): string => {
    const by = element.getAttribute('aria-labelledby');
    const label = (element as HTMLInputElement).labels?.[0];
    if (element.hasAttribute('aria-label')) return plain(element.getAttribute('aria-label'));
    if (by)
      return plain(
        by
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent)
          .join(' '),
      );
    return plain(shown(label ?? element));
  };
  const wanted = pattern ? new RegExp(name) : undefined;
  const fits = (element: Element) => {
    const own = nameOf(element);
    return wanted ? wanted.test(own) : own === plain(name);
  };
  const visible = (element: Element) => {
    const { width, height } = element.getBoundingClientRect();
    return width > 0 && height > 0 && getComputedStyle(element).visibility === 'visible';
  };
  const front: ParentNode = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document;
  const named = [front, ...front.querySelectorAll('[aria-label], [aria-labelledby], fieldset')];
  const areas = within
    ? named.filter((area) => area instanceof Element && nameOf(area).startsWith(within))
    : [front];
  const alike = areas.flatMap((area) => [...area.querySelectorAll(selectors[role])]).filter(visible);
  const found = alike.filter(fits).at(-1);
  if (!found) {
    const there = alike.map(nameOf).join(' | ').slice(0, 600);
    return { missing: `no ${role} '${name}' ${within ? `in '${within}' ` : ''}among: ${there}` };
  }
  const target = found.matches('input[type=checkbox]') ? (found.closest('label') ?? found) : found;
  const middle = () => {
    const box = target.getBoundingClientRect();
    return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  };
  const isFree = () => {
    const { x, y } = middle();
    const over = document.elementFromPoint(x, y);
    return over !== null && (target.contains(over) || over.contains(target));
  };
  if (!toTouch) return { ...middle(), disabled: false };
  for (const block of ['center', 'start', 'end'] as const) {
    if (!isFree()) target.scrollIntoView({ block, behavior: 'instant' });
  }
  if (!isFree()) return { missing: `${role} '${name}' is covered` };
  return { ...middle(), disabled: found.getAttribute('aria-disabled') === 'true' };
}

/** Listens for the next press, so that one which a laden machine never handed on can be made again. */
export function listenForPress(): void {
  const world = window as unknown as { pressHeard: boolean };
  world.pressHeard = false;
  const heard = () => {
    world.pressHeard = true;
  };
  addEventListener('click', heard, { capture: true, once: true });
}

export const pressWasHeard = (): boolean =>
  (window as unknown as { pressHeard?: boolean }).pressHeard !== false;

/** Marks what a text field holds, so that the next keys take its place. */
export function markFocusedText(): boolean {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return false;
  field.select();
  return true;
}

/** Moves this page's clocks on; what is written from then on is written at that time. */
export function moveClock(by: number): void {
  const world = window as unknown as { Date: DateConstructor; movedBy?: number };
  if (world.movedBy === undefined) {
    const Real = world.Date;
    world.Date = new Proxy(Real, {
      construct: (_, args) => Reflect.construct(Real, args.length > 0 ? args : [world.Date.now()]),
      get: (_, key) => (key === 'now' ? () => Real.now() + (world.movedBy ?? 0) : Reflect.get(Real, key)),
    });
    const sinceOpened = performance.now.bind(performance);
    performance.now = () => sinceOpened() + (world.movedBy ?? 0);
  }
  world.movedBy = by;
  dispatchEvent(new Event('focus'));
}

/** Hands a file to the file field of the screen, as its picker would. */
export function giveFile(name: string, text: string): boolean {
  const field = document.querySelector<HTMLInputElement>('input[type=file]');
  if (!field) return false;
  const chosen = new DataTransfer();
  chosen.items.add(new File([text], name, { type: 'text/plain' }));
  field.files = chosen.files;
  field.dispatchEvent(new Event('input', { bubbles: true }));
  field.dispatchEvent(new Event('change', { bubbles: true }));
  return true;
}

// biome-ignore lint/performance/useDomNodeTextContent: what is hidden is not said, and a line break is a space
export const textShown = (): string => document.body.innerText.replace(/[\s\u202f\u00a0]+/g, ' ');

/** What moves has moved on by then; a page in the background draws nothing and waits no longer. */
export const twoFrames = (): Promise<void> =>
  new Promise((drawn) => {
    requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(drawn, 50)));
    setTimeout(drawn, 500);
  });
