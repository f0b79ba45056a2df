import type { ComponentChildren } from 'preact';

/** What a picture shows, and the way to the same picture filling the screen. */
export function PictureHead({ children, to }: { children: ComponentChildren; to: string }) {
  return (
    <div class="picture-head">
      <h2>{children}</h2>
      <a href={`#${to}`}>Larger</a>
    </div>
  );
}
