import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { ClockStrip } from '#app/laying-up/clocks/clock-strip.tsx';
import { idle } from '#app/platform/idle.ts';
import { matchPath, type Params, path } from '#app/router.ts';
import { shelfIsThere } from '#app/state/documents.ts';
import { shop } from '#app/state/shop.ts';
import { CannotOpen } from './cannot-open.tsx';
import { late } from './late.ts';
import { NotHereYet } from './not-here-yet.tsx';
import { Notices } from './notices.tsx';
import type { ScreenType } from './route.ts';
import { firstScreen, routes } from './routes.ts';
import { ScreenFault } from './screen-fault.tsx';
import { Tabs } from './tabs.tsx';
import './app.css';
import './height.css';
import './strip-height.css';
import './big-letters.css';
import './big-letters-desk.css';

const loaded = new Map<string, ScreenType>();

/**
 * Fetches every screen into memory, so that an update of the cache cannot pull one away from an open page; one at a
 * time, so that a thumb that comes down meanwhile is not kept waiting.
 */
export async function loadAllScreens(): Promise<void> {
  for (const route of routes) {
    await idle();
    try {
      loaded.set(route.pattern, await route.load());
    } catch {
      // No network, and not cached yet: it is fetched when it is asked for.
      return;
    }
  }
}

function match(address: string): { pattern: string; params: Params } | undefined {
  for (const { pattern } of routes) {
    const params = matchPath(pattern, address);
    if (params) return { pattern, params };
  }
  return undefined;
}

/** A style sheet that failed is not asked for again by the import that wants it. */
function refetchStyles(): void {
  for (const link of document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')) {
    if (!link.sheet) link.replaceWith(link.cloneNode());
  }
}

const networkIsBack = (): Promise<boolean> =>
  fetch(location.pathname, { cache: 'no-store' }).then(
    (answer) => answer.ok,
    () => false,
  );

function CurrentScreen() {
  const arrived = useSignal(0);
  const missing = useSignal<string | undefined>(undefined);
  const found = match(path.value);
  const Screen = found ? loaded.get(found.pattern) : firstScreen;
  const fetchScreen = async () => {
    const route = found && routes.find((r) => r.pattern === found.pattern);
    if (!route) return;
    if (missing.value !== undefined) refetchStyles();
    try {
      loaded.set(route.pattern, await route.load());
      missing.value = undefined;
      arrived.value += 1;
    } catch {
      missing.value = route.pattern;
    }
  };
  // A browser may remember for as long as the page lives that a script could not be had: then only a new page asks again.
  const tryAgain = async () => {
    await fetchScreen();
    if (missing.value !== undefined && (await networkIsBack())) location.reload();
  };
  useEffect(() => {
    if (found && !Screen && missing.value !== found.pattern) fetchScreen();
  });
  useEffect(() => scrollTo(0, 0), [path.value]);
  if (found && !Screen && missing.value === found.pattern) return <NotHereYet onRetry={tryAgain} />;
  if (arrived.value < 0 || !Screen || (found && !shelfIsThere.value)) return <div class="screen" />;
  return <Screen key={path.value} params={found?.params ?? {}} />;
}

export function App() {
  const phase = shop.value.phase;
  if (phase === 'opening') return null;
  if (phase === 'failed' || phase === 'lost') return <CannotOpen />;
  return (
    <>
      <ClockStrip />
      <Notices />
      <ScreenFault at={path.value}>
        <CurrentScreen />
      </ScreenFault>
      <Tabs />
      {late.value && <late.value.InFront />}
    </>
  );
}
