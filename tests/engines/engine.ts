/** What one browser page does, whoever built the browser. */
export interface Page {
  /** Resolves when the page has loaded. */
  open(address: string): Promise<void>;
  /** Runs a function of its own in the page; arguments and answer are JSON. */
  run<T, A extends unknown[]>(inPage: (...args: A) => T | Promise<T>, ...args: A): Promise<T>;
  /** A finger, or the mouse where an engine knows no finger, down for so long, ms. */
  touch(x: number, y: number, lasts: number): Promise<void>;
  /** Keys of a keyboard, one after the other. */
  keys(keys: readonly string[]): Promise<void>;
  picture(): Promise<Buffer>;
  /** Closes it; the page before it has the screen again. */
  close(): Promise<void>;
}

export interface Browser {
  page: Page;
  newPage(): Promise<Page>;
  /** Errors of any page, and what its policy refused. */
  troubles(): Promise<string[]>;
  close(): Promise<void>;
  /** SIGKILL of all its processes. */
  kill(): Promise<void>;
}

export interface Engine {
  name: string;
  /** What is needed to run it here; undefined when it is not installed. */
  found: string | undefined;
  /** Whether what is stored outlives the browser. */
  keepsProfile: boolean;
  /** Whether it has an origin private file system here, where the second copy goes. */
  hasLinesFile: boolean;
  /** `folder` takes its profile and its downloads. */
  start(folder: string): Promise<Browser>;
}

/** A phone's screen, CSS px. */
export const screen = { width: 360, height: 740 };

/** PageDown and Tab as WebDriver spells them. */
export const webDriverKeys: Readonly<Record<string, string>> = { PageDown: '\uE00F', Tab: '\uE004' };

/** The steps of a touch in the words of WebDriver, which BiDi shares. */
export const touchActions = (pointerType: 'touch' | 'mouse', x: number, y: number, lasts: number) => [
  {
    type: 'pointer',
    id: 'thumb',
    parameters: { pointerType },
    actions: [
      { type: 'pointerMove', x: Math.round(x), y: Math.round(y), duration: 0 },
      { type: 'pointerDown', button: 0 },
      { type: 'pause', duration: lasts },
      { type: 'pointerUp', button: 0 },
    ],
  },
];

export const keyActions = (keys: readonly string[]) => [
  {
    type: 'key',
    id: 'keyboard',
    actions: keys.flatMap((key) => {
      const value = webDriverKeys[key] ?? key;
      return [
        { type: 'keyDown', value },
        { type: 'keyUp', value },
      ];
    }),
  },
];
