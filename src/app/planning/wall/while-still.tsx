import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Leaves what is in it as it was while a thumb drags, so that the pictures keep up with it. */
export function WhileStill({ moving, children }: { moving: boolean; children: ComponentChildren }) {
  const kept = useRef(children);
  if (!moving) kept.current = children;
  return <>{kept.current}</>;
}

/** Leaves what nobody sees as it was while a thumb drags: let go, or scrolled to, it catches up. */
export function WhileUnseen({ moving, children }: { moving: boolean; children: ComponentChildren }) {
  const seen = useSignal(true);
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = box.current;
    if (!element || typeof IntersectionObserver === 'undefined') return;
    const watcher = new IntersectionObserver(([now]) => {
      seen.value = now?.isIntersecting !== false;
    });
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  return (
    <div ref={box}>
      <WhileStill moving={moving && !seen.value}>{children}</WhileStill>
    </div>
  );
}
