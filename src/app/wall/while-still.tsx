import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';

/** Leaves what is in it as it was while a thumb drags, so that the pictures keep up with it. */
export function WhileStill({ moving, children }: { moving: boolean; children: ComponentChildren }) {
  const kept = useRef(children);
  if (!moving) kept.current = children;
  return <>{kept.current}</>;
}
