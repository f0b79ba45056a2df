import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { ClockStrip } from '#app/clocks/clock-strip.tsx';
import { matchPath, type Params, path } from '#app/router.ts';
import { shelfIsThere } from '#app/state/documents.ts';
import { shop } from '#app/state/shop.ts';
import { CannotOpen } from './cannot-open.tsx';
import { Notices } from './notices.tsx';
import { firstScreen, routes, type ScreenType } from './routes.ts';
import { Tabs } from './tabs.tsx';
import './app.css';

const loaded = new Map<string, ScreenType>();

/** Fetches every screen into memory, so that an update of the cache cannot pull one away from an open page. */
export async function loadAllScreens(): Promise<void> {
  for (const route of routes) loaded.set(route.pattern, await route.load());
}

function match(address: string): { pattern: string; params: Params } | undefined {
  for (const { pattern } of routes) {
    const params = matchPath(pattern, address);
    if (params) return { pattern, params };
  }
  return undefined;
}

function CurrentScreen() {
  const arrived = useSignal(0);
  const found = match(path.value);
  const Screen = found ? loaded.get(found.pattern) : firstScreen;
  useEffect(() => {
    if (!found || Screen) return;
    const route = routes.find((r) => r.pattern === found.pattern);
    route?.load().then((screen) => {
      loaded.set(found.pattern, screen);
      arrived.value += 1;
    });
  });
  useEffect(() => scrollTo(0, 0), [path.value]);
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
      <CurrentScreen />
      <Tabs />
    </>
  );
}
