import type { PrecacheEntry } from './precache.ts';

/** Part of newer browsers only, so the worker's type library does not know it. */
interface Rule {
  condition: {
    urlPattern: { pathname: string; search: string };
    requestMethod: 'GET';
    requestMode?: 'navigate';
  };
  source: 'cache' | { cacheName: string };
}
type TakesRules = { addRoutes?(rules: Rule[]): Promise<void> };

interface Kept {
  cacheName: string;
  entries: readonly PrecacheEntry[];
  /** Parts that the page itself names: they are not looked for in the caches of earlier versions first. */
  first: readonly string[];
  scope: string;
}

/**
 * What the browser may answer out of the cache by itself, without waking the worker: the page as it is opened, and
 * its parts. All else, and all of it where a browser does not know such rules, comes to the worker's own answer.
 */
export async function answerWithoutWorker(
  event: ExtendableEvent,
  { cacheName, entries, first, scope }: Kept,
): Promise<void> {
  const rule = (path: string, source: Rule['source'], page = false): Rule => ({
    condition: {
      urlPattern: { pathname: asPattern(new URL(scope).pathname) + path, search: '' },
      requestMethod: 'GET',
      ...(page && { requestMode: 'navigate' }),
    },
    source,
  });
  const own = { cacheName };
  const named = entries.map(({ url }) => url).filter((url) => !isPart(url) && url !== 'index.html');
  const rules = [
    rule('', own, true),
    rule('index.html', own, true),
    ...[...first, ...named].map((url) => rule(asPattern(url), own)),
    // Pages opened before an update ask for parts of the version before: their names carry a hash, so any cache will do.
    rule('assets/*', 'cache'),
  ];
  try {
    await (event as TakesRules).addRoutes?.(rules);
  } catch {
    // Refused, they must not cost the phone the app: the worker answers everything.
  }
}

const isPart = (url: string): boolean => url.startsWith('assets/');

/** Signs that mean something in a pattern stand for themselves. */
const asPattern = (path: string): string => path.replace(/[\\+*?:{}()]/g, '\\$&');
