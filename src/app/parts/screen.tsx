import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { late } from '#app/shell/late.ts';
import { useSticks } from './sticks.ts';
import { UnitsSwitch } from './units-switch.tsx';
import './screen.css';

interface Props {
  /** Where we are, small, above the title. */
  kicker?: ComponentChildren;
  title: string;
  /** Where 'back' leads; leave out on the four first screens. */
  back?: { to: string; label: string };
  /** Main action and its neighbors, kept in thumb reach. */
  actions?: ComponentChildren;
  /** Figures are typed here: the keys get the room of tabs and clocks, and 'back' lies beside the main action. */
  keys?: boolean;
  children?: ComponentChildren;
}

/** One screen: what it asks at the top, what it shows, and what a thumb can do at the bottom. */
export function Screen({ kicker, title, back, actions, keys, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const foot = useSticks('bottom');
  useEffect(() => {
    document.title = `${title} · Tubewright`;
    heading.current?.focus({ preventScroll: true });
  }, [title]);
  return (
    <div class={keys ? 'screen screen-keys' : 'screen'}>
      <main class="screen-main">
        {keys ? (
          late.value && <late.value.WipeKey kind="top" />
        ) : (
          <div class="screen-top">
            {back && (
              <a class="screen-back" href={`#${back.to}`}>
                ‹ {back.label}
              </a>
            )}
            <UnitsSwitch />
          </div>
        )}
        {kicker && <p class="screen-kicker">{kicker}</p>}
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {children}
      </main>
      {actions && (
        <section class="screen-actions" aria-label="Actions" ref={foot}>
          {keys && back && (
            <a class="secondary" href={`#${back.to}`}>
              ‹ {back.label}
            </a>
          )}
          {late.value && <late.value.UndoLast />}
          {actions}
        </section>
      )}
    </div>
  );
}
