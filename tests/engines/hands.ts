import { expect } from 'vitest';
import type { Page } from './engine.ts';
import {
  giveFile,
  listenForPress,
  markFocusedText,
  moveClock,
  placeOf,
  pressWasHeard,
  type Sought,
  textShown,
  twoFrames,
} from './in-page.ts';
import { until } from './until.ts';

/** A glove bounces: a press sooner than this after what the last one did would be taken for the same, ms */
const bounce = 400;
/** A thumb's tap and its press-and-hold, ms */
const [tap, hold] = [40, 2200];
/** A laden machine hands a press on late; made again too soon, the second would press what the first one brought, ms */
const lateAtMost = 8000;

type Name = string | RegExp;

const sought = (role: Sought['role'], name: Name, within?: string): Omit<Sought, 'toTouch'> => ({
  role,
  name: typeof name === 'string' ? name : name.source,
  pattern: typeof name !== 'string',
  ...(within !== undefined && { within }),
});

/** A builder's hands on one page: what they press is found by its words, as a person finds it. */
export class Hands {
  private movedBy = 0;

  constructor(
    readonly page: Page,
    readonly address: string,
  ) {}

  /** A fresh page of the app, at a screen: '#/data'. */
  async open(screen = ''): Promise<void> {
    await this.page.open(this.address + screen);
    if (this.movedBy > 0) await this.page.run(moveClock, this.movedBy);
    await this.seeHeading(/./);
  }

  async goTo(screen: string): Promise<void> {
    await this.page.run((hash) => {
      location.hash = hash;
    }, screen);
  }

  press = (name: Name, within?: string): Promise<void> => this.touch(sought('button', name, within), tap);
  follow = (name: Name): Promise<void> => this.touch(sought('link', name), tap);
  check = (name: Name): Promise<void> => this.touch(sought('checkbox', name), tap);

  async holdDown(name: Name): Promise<void> {
    await this.touch(sought('button', name), hold);
    // What came in its place takes no press until the finger is well away.
    await new Promise((passed) => setTimeout(passed, bounce));
  }

  seeHeading = (name: Name): Promise<void> => this.see(sought('heading', name));
  seeFigure = (name: Name): Promise<void> => this.see(sought('figure', name));
  seeSaid = (name: Name): Promise<void> => this.see(sought('said', name));
  seeLink = (name: Name): Promise<void> => this.see(sought('link', name));
  seeLine = (name: Name): Promise<void> => this.see(sought('checkbox', name));
  seeButton = (name: Name): Promise<void> => this.see(sought('button', name));

  async seeText(words: string): Promise<void> {
    await until(`the screen says '${words}'`, async () => (await this.page.run(textShown)).includes(words));
  }

  async figuresOnKeys(figures: string): Promise<void> {
    for (const figure of figures) await this.touch(sought('button', figure), tap, 0);
  }

  async fill(label: Name, text: string): Promise<void> {
    await this.touch(sought('textbox', label), tap);
    await until(`'${label}' has the focus`, () => this.page.run(markFocusedText));
    await this.page.keys([...text]);
  }

  keys = (...keys: string[]): Promise<void> => this.page.keys(keys);

  async takeFile(name: string, text: string): Promise<void> {
    await until('there is a field for a file', () => this.page.run(giveFile, name, text));
  }

  /** Time goes by in this page. */
  async later(minutes: number): Promise<void> {
    await this.passTime(minutes * 60_000);
  }

  /** Another page at the same time of day. */
  beside(page: Page): Hands {
    const hands = new Hands(page, this.address);
    hands.movedBy = this.movedBy;
    return hands;
  }

  private async passTime(by: number): Promise<void> {
    this.movedBy += by;
    await this.page.run(moveClock, this.movedBy);
  }

  private async see(what: Omit<Sought, 'toTouch'>): Promise<void> {
    await until('what is looked for', async () => {
      const place = await this.page.run(placeOf, { ...what, toTouch: false });
      if ('missing' in place) throw new Error(place.missing);
      return true;
    });
  }

  /** Where it is to be touched, once it has come to rest: a list still moves when its next step is brought into sight. */
  private async atRest(what: Omit<Sought, 'toTouch'>): Promise<{ x: number; y: number }> {
    const look = async () => {
      const place = await this.page.run(placeOf, { ...what, toTouch: true });
      if ('missing' in place) throw new Error(place.missing);
      if (place.disabled) throw new Error(`'${what.name}' is not to be pressed yet`);
      return place;
    };
    const before = await look();
    await this.page.run(twoFrames);
    const { x, y } = await look();
    if (Math.hypot(x - before.x, y - before.y) > 1) throw new Error(`'${what.name}' still moves`);
    return { x, y };
  }

  private async touch(what: Omit<Sought, 'toTouch'>, lasts: number, rest = bounce): Promise<void> {
    // What is there now may have come with the end of the last press.
    await this.see(what);
    if (rest > 0) await this.passTime(rest);
    await until(
      'what is pressed',
      async () => {
        const { x, y } = await this.atRest(what);
        await this.page.run(listenForPress);
        await this.page.touch(x, y, lasts);
        if (lasts === tap) await until('the press is heard', () => this.page.run(pressWasHeard), lateAtMost);
        return true;
      },
      60_000,
    );
  }
}

export async function expectNoTroubles(troubles: Promise<string[]>): Promise<void> {
  // A request that nobody answers is what having no network is; a browser tells it as an error.
  // So is one that its page did not wait for: Firefox tells of a service worker's 'unexpected error' when a page is
  // left while it loads. A worker that really failed leaves the screen empty, which the hands then stand before.
  // A ResizeObserver that tells of a size in the next frame only is no fault.
  const none =
    /Failed to load resource|NetworkError|ERR_CONNECTION|ServiceWorker intercepted the request|ResizeObserver loop/i;
  const own = (await troubles).filter((t) => !none.test(t));
  expect(own).toEqual([]);
}
